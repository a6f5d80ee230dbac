import { foodCalled } from '../event';
import { amountText } from '../measure';
import type { Plan } from '../plan';
import { say, sayMessage, type Formats } from '../words';
import { sectionText } from './shopping-names';

/** Lines of one part of the page. */
export type Lines = readonly string[];

const unique = <T>(items: readonly T[]): T[] => [...new Set(items)];

/** Who comes, in waves, and how many are there at once. */
export function guestLines({ guests, event }: Plan, f: Formats): Lines {
  const [adults, children] = [guests.adults.value, guests.children.value];
  if (adults + children === 0) return [say(f, 'report.noGuests')];
  return [
    `${say(f, 'report.people', { adults, children })}; ${say(f, 'report.planned', { planned: guests.planned.value, cover: event.preferences.cover })}`,
    ...guests.waves.map(({ name, adults, children, from, to }) => say(f, 'report.wave', { name, adults, children, from, to })),
    say(f, 'report.peak', { people: guests.peak.value, at: guests.peakAt }),
  ];
}

/** Every dish with its portions. */
export function menuLines({ menu }: Plan, f: Formats): Lines {
  if (menu.dishes.length === 0) return [say(f, 'report.noDishes')];
  return menu.dishes.map((d) => {
    const [name, portions, total] = [d.name, d.portions.value, amountText(d.total)];
    if (d.servedAs === 'piece') return say(f, 'report.dish.piece', { name, portions });
    return say(f, d.servedAs === 'cup' ? 'report.dish.cup' : 'report.dish.portion', { name, portions, total });
  });
}

/** One line for each section of the shop. */
export function shoppingLines({ buying, event }: Plan, f: Formats): Lines {
  const wanted = buying.lines.filter((line) => line.buy.amount.gt(0));
  const known = [...buying.sections, ...wanted.map((line) => line.section)];
  const bySection = unique(known).flatMap((section) => {
    const here = wanted.filter((line) => line.section === section).map((line) => say(f, 'report.buy', { name: line.name, buy: amountText(line.buy), food: line.ingredient }));
    return here.length === 0 ? [] : [`${sectionText(section, f)}: ${here.join(', ')}`];
  });
  return [
    ...(bySection.length === 0 && buying.lines.length > 0 ? [say(f, 'report.allInHouse')] : bySection),
    ...(buying.cost === null ? [] : [say(f, buying.unpriced === 0 ? 'report.cost' : 'buying.total', { cost: buying.cost, unpriced: buying.unpriced })]),
    ...(buying.unknown.length === 0 ? [] : [say(f, 'report.unknown', { names: buying.unknown.map((u) => foodCalled(u.ingredient, event.recipes)) })]),
  ];
}

/** Batches of each dish, loads, bowls, oil, and what comes too late with what helps. */
export function fryingLines({ frying, menu, event }: Plan, f: Formats): Lines {
  const dishName = (id: string): string => menu.dishes.find((d) => d.id === id)?.name ?? id;
  const panName = (id: string): string => event.kitchen.pans.find((p) => p.id === id)?.name ?? id;
  const problems = frying.problems.map((problem) => sayMessage(f, problem));
  if (frying.batches.length === 0) return problems;
  return [
    ...unique(frying.batches.map((b) => b.dish)).map((dish) => {
      const own = frying.batches.filter((b) => b.dish === dish);
      return say(f, 'report.fryDish', {
        dish: dishName(dish), batches: own.length, pieces: own.reduce((sum, b) => sum + b.pieces, 0),
        first: Math.min(...own.map((b) => b.dropAt)), last: Math.max(...own.map((b) => b.liftAt)),
      });
    }),
    ...frying.loads.map((load) => say(f, 'report.load', { pan: panName(load.pan), dish: dishName(load.dish), pieces: load.pieces.value })),
    ...(frying.bowls.length === 0 ? [] : [say(f, 'report.bowls', { bowls: frying.bowls.length, batterKg: frying.batterKg.value })]),
    say(f, 'report.oil', { buy: frying.buyLitres.value, fill: frying.fillLitres.value }),
    ...frying.sessions.map((s) => say(f, 'report.heat', { pan: panName(s.pan), on: s.heatOnAt, off: s.heatOffAt })),
    ...frying.shortages.flatMap((s) => [say(f, 'report.unmet', { dish: dishName(s.dish), unmet: s.unmet, from: s.from, to: s.to }), ...[...s.remedies, ...(s.note === null ? [] : [s.note])].map((more) => `  ${sayMessage(f, more)}`)]),
    ...frying.leads.flatMap((lead) => (lead.note === null ? [] : [sayMessage(f, lead.note)])),
    ...problems,
  ];
}

/** Rounds of each drink and when each flask is filled. */
export function drinksLines({ drinks, menu }: Plan, f: Formats): Lines {
  return [
    ...unique(drinks.rounds.map((r) => r.drink)).map((drink) => {
      const own = drinks.rounds.filter((r) => r.drink === drink);
      return say(f, 'report.rounds', {
        drink: menu.dishes.find((d) => d.id === drink)?.name ?? drink, rounds: own.length,
        litres: own.reduce((sum, r) => sum + r.litres, 0), first: Math.min(...own.map((r) => r.startAt)),
      });
    }),
    ...drinks.dispensers.flatMap(({ id, name }) => {
      const times = drinks.fills.filter((fill) => fill.dispenser === id).map((fill) => fill.at);
      return times.length === 0 ? [] : [say(f, 'report.fill', { dispenser: name, times })];
    }),
  ];
}

/** Kinds of jobs the parts above already tell. */
const toldAbove = new Set(['fry', 'bowl', 'brew', 'fill', 'watchOil']);
const mostTasks = 24;

/** The jobs in order of start, those of frying and brewing left out: they stand above. */
export function dayLines({ day, event }: Plan, f: Formats): Lines {
  const who = (id: string): string => event.people.find((p) => p.id === id)?.name ?? id;
  const own = day.tasks.filter((task) => !toldAbove.has(task.kind));
  return [
    ...own.slice(0, mostTasks).map((t) => say(f, 'report.task', { at: t.start, end: t.end, name: sayMessage(f, t.name), who: t.who.map(who) })),
    ...(own.length > mostTasks ? [say(f, 'report.moreTasks', { count: own.length - mostTasks })] : []),
  ];
}
