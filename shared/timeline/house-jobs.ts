import type { BuyingPlan } from '../buying';
import type { Event } from '../event';
import type { FryingPlan } from '../frying';
import { minutesPerDay, highest, lowest } from '../measure';
import { isRice, type MenuPlan } from '../menu';
import { safetyRule } from '../reference';
import { calendarDay, dayNumber, type Message } from '../words';
import type { DayValues } from './day-values';
import type { Job } from './job';
import type { TaskKind } from './types';

interface Draft {
  readonly id: string;
  readonly kind: TaskKind;
  readonly name: Message;
  readonly minutes: number;
  readonly roles: readonly string[];
  readonly from: number;
  readonly to: number;
  readonly towards: 'late' | 'early';
  readonly anyTime?: boolean;
  readonly about?: Job['about'];
}

const jobOf = (d: Draft): Job => ({
  id: d.id, kind: d.kind, roles: d.roles, about: d.about ?? {}, after: [], towards: d.towards, spare: 0, anyTime: d.anyTime ?? false,
  stretches: [{ id: d.id, minutes: d.minutes, attention: 1, needs: [], name: d.name }],
  earliest: d.from, latest: Math.max(d.to, d.from + d.minutes), notDoneBefore: d.from,
});

/** When the first step of any of these dishes begins; infinity when there is none. */
export type FirstWork = (dishes: ReadonlySet<string>) => number;

/** One trip to the shops: how long it takes, and whose first work it must be back for. */
export interface Trip {
  readonly id: string;
  readonly minutes: number;
  readonly name: Message;
  /** The day of the trip, counted from the event's. */
  readonly day: number;
  /** Dishes whose work needs it; null when it lies on a day the cook set. */
  readonly dishes: ReadonlySet<string> | null;
}

/** A trip on each day the cook set for something; of the rest two trips to the shops: early for what keeps, the day before for what is best fresh. */
export function tripsFor(takes: DayValues, buying: BuyingPlan, day: string): readonly Trip[] {
  const keeps = (days: number | null): boolean => days === null || days >= takes.keepsDays;
  const all = buying.lines.filter((l) => l.buy.amount.gt(0));
  const lasts = (lines: number): number => Math.min(takes.longestShop, Math.round(takes.shop + takes.perLine * lines));
  const setDays = [...new Set(all.flatMap((l) => l.when ?? []))].toSorted();
  const onItsDay = setDays.map((when): Trip => {
    const items = all.filter((l) => l.when === when).length;
    return { id: `shop/on/${when}`, minutes: lasts(items), name: { id: 'timeline.task.shopOn', params: { items } }, day: dayNumber(calendarDay(when)) - dayNumber(calendarDay(day)), dishes: null };
  });
  const bought = all.filter((l) => l.when === null);
  const trip = (id: string, on: number, lines: BuyingPlan['lines'], name: Message): Trip[] =>
    (lines.length === 0 ? [] : [{ id, minutes: lasts(lines.length), name, day: on, dishes: new Set(lines.flatMap((l) => l.origins.map((o) => o.dish))) }]);
  const early = bought.filter((l) => keeps(l.keepsDays));
  const fresh = bought.filter((l) => !keeps(l.keepsDays));
  return [
    ...onItsDay,
    ...trip('shop/early', -3, early, { id: 'timeline.task.shopEarly', params: { items: early.length } }),
    ...trip('shop/fresh', -1, fresh, { id: 'timeline.task.shopFresh', params: { items: fresh.length } }),
  ];
}

/** A trip as a job: on its day, or the day before the first work with what it brings when that begins earlier than the trip would end. */
export function tripJob(takes: DayValues, { id, minutes, name, day, dishes }: Trip, firstWork: FirstWork): Job {
  const first = dishes === null ? Number.POSITIVE_INFINITY : firstWork(dishes);
  const on = first >= day * minutesPerDay + takes.shopsOpen + minutes ? day : Math.floor(first / minutesPerDay) - 1;
  const from = on * minutesPerDay + takes.shopsOpen;
  const to = dishes === null ? on * minutesPerDay + takes.shopsShut : Math.max(from + minutes, Math.min(on * minutesPerDay + takes.shopsShut, first));
  return jobOf({ id, kind: 'shop', name, minutes, roles: ['runner', 'cook'], from, to, towards: 'early', anyTime: true });
}

/** Every trip to the shops as a job, before the work that needs what it brings. */
export const shopJobs = (takes: DayValues, buying: BuyingPlan, firstWork: FirstWork, day: string): Job[] => tripsFor(takes, buying, day).map((trip) => tripJob(takes, trip, firstWork));

/** Tables, fry stations and the drinks table before the doors open. */
export function setUpJobs(takes: DayValues, event: Event, frying: FryingPlan, drinks: boolean): Job[] {
  const base = { kind: 'setUp' as const, towards: 'late' as const };
  const stations = event.kitchen.stations.flatMap((s) => {
    const hot = frying.sessions.filter((x) => x.station === s.id).map((x) => x.heatOnAt);
    if (hot.length === 0) return [];
    const to = lowest(hot);
    return [jobOf({ ...base, id: `set-up/station/${s.id}`, name: { id: 'timeline.task.setUpStation', params: { station: s.name } }, minutes: takes.station, roles: ['fryer', 'runner'], from: to - takes.setUpWindow, to, about: { station: s.id } })];
  });
  const to = event.opensAt;
  return [
    ...stations,
    ...(drinks ? [jobOf({ ...base, id: 'set-up/drinks', name: { id: 'timeline.task.setUpDrinks' }, minutes: takes.drinks, roles: ['tea', 'runner'], from: to - takes.setUpWindow, to })] : []),
    jobOf({ ...base, id: 'set-up/tables', name: { id: 'timeline.task.setUpTables' }, minutes: takes.tables, roles: ['runner'], from: to - takes.tablesWindow, to }),
  ];
}

/** Bringing out and clearing while the doors are open; each round may be a little early or late. */
export function serveJobs(takes: DayValues, event: Event): Job[] {
  const rounds = Math.max(0, Math.floor((event.closesAt - event.opensAt) / takes.between));
  return Array.from({ length: rounds }, (_, k) => {
    const at = Math.round(event.opensAt + (k + 0.5) * takes.between);
    return jobOf({ id: `serve/${k + 1}`, kind: 'serve', name: { id: 'timeline.task.serve' }, minutes: takes.round, roles: ['runner'], from: Math.ceil(at - takes.between / 2), to: Math.floor(at + takes.between / 2) + takes.round, towards: 'early' });
  });
}

/** Cooked rice is cold so many minutes after it was last served (rule PR-05a): it goes into the fridge in shallow boxes, at once. */
const riceColdWithin = (safetyRule('PR-05a').limit ?? 1) * 60;

/** What is left is cooled or put away when the last of a dish has been served; rice within its hour, in one go. */
export function coolJobs(takes: DayValues, event: Event, menu: MenuPlan): Job[] {
  return menu.dishes.flatMap((d) => {
    const dish = event.menu.dishes.find((x) => x.id === d.id);
    const own = d.recipe.frying !== undefined || d.recipe.brewing !== undefined || !d.recipe.needsTemperatureControl;
    if (own || d.lastServed === null || dish?.served.kind === 'fixed') return [];
    const from = Math.ceil(d.lastServed) + 1;
    return [jobOf({ id: `cool/${d.id}`, kind: 'cool', name: { id: isRice(d) ? 'timeline.task.coolRice' : 'timeline.task.cool', params: { dish: d.name } }, minutes: takes.cool, roles: ['cook', 'runner'], from, to: isRice(d) ? Math.floor(d.lastServed) + riceColdWithin : from + 60, towards: 'early', about: { dish: d.id } })];
  });
}

/** Cleaning after closing; the room only when guests were there. */
export function afterJobs(takes: DayValues, event: Event, people: number): Job[] {
  const extra = Math.min(takes.guestMost, Math.round((takes.perGuest * people) / 5) * 5);
  const base = { kind: 'clean' as const, from: event.closesAt, to: event.closesAt + 300, towards: 'early' as const };
  return [
    jobOf({ ...base, id: 'clean/kitchen', name: { id: 'timeline.task.cleanKitchen' }, minutes: takes.kitchen + extra, roles: ['cook'] }),
    ...(people === 0 ? [] : [jobOf({ ...base, id: 'clean/room', name: { id: 'timeline.task.cleanRoom' }, minutes: takes.diningRoom + extra, roles: ['runner', 'tea'] })]),
  ];
}

/** The oil is moved only after it has stood for the hours the kitchen says. */
export function oilAwayJobs(takes: DayValues, event: Event, frying: FryingPlan): Job[] {
  const pans = [...new Set(frying.sessions.map((s) => s.pan))];
  return pans.map((pan) => {
    const off = highest(frying.sessions.filter((s) => s.pan === pan).map((s) => s.heatOffAt));
    const from = Math.ceil(off + event.kitchen.oilRestHours * 60);
    const name = event.kitchen.pans.find((p) => p.id === pan)?.name ?? pan;
    return jobOf({ id: `oil-away/${pan}`, kind: 'oilAway', name: { id: 'timeline.task.oilAway', params: { pan: name } }, minutes: takes.oil, roles: ['fryer', 'cook'], from, to: from + minutesPerDay, towards: 'early', anyTime: true });
  });
}
