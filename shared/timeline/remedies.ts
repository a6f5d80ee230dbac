import { dayOf, type Burner, type Dispenser, type Event, type Pot } from '../event';
import type { Message } from '../words';

/** What a household may borrow for the day: an electric ring, an electric urn that brews, a pot, an oven, a folding table. */
export type Borrowed = 'ring' | 'urn' | 'pot' | 'oven' | 'counter';

/**
 * One change that may make the day work. Plain values, so that a worker can send it and an edit can make it. Minutes from the event's midnight.
 * `move`: the job is pinned to this minute (`own`: one of the cook's own jobs gets these hours). `hours`: a helper of the list is there from when to when.
 * `helper`: one more helper. `borrow`: one more of a thing. `drop`: the dish is left off.
 */
export type RemedyChange =
  | { readonly kind: 'move'; readonly job: string; readonly at: number; readonly own: boolean }
  | { readonly kind: 'hours'; readonly person: string; readonly from: number; readonly to: number }
  | { readonly kind: 'helper'; readonly roles: readonly string[]; readonly from: number; readonly to: number }
  | { readonly kind: 'borrow'; readonly thing: Borrowed }
  | { readonly kind: 'drop'; readonly dish: string };

/** A change that was planned and made the clash go away without making another one. */
export interface DayRemedy {
  readonly change: RemedyChange;
  /** What to do, in words. */
  readonly message: Message;
  readonly cost: RemedyCost;
  /** First tasks of other clashes that go away with it. */
  readonly alsoEnds: readonly string[];
}

/** What a remedy costs, read from the day planned with it. */
export interface RemedyCost {
  /** Minutes by which the job of this clash is still late: always 0, for what leaves it late is not offered. */
  readonly lateMinutes: number;
  /** Minutes by which a job starts sooner or later than now, for `move`; else 0. */
  readonly movedMinutes: number;
  /** Minutes of somebody's time that are asked for, for `hours` and `helper`; else 0. */
  readonly helperMinutes: number;
  /** Other jobs that start at another minute or are somebody else's. */
  readonly otherJobs: number;
}

/** The remedies of one clash, cheapest first, at most three; none when no single change of those that were planned would do. */
export interface ClashRemedies {
  /** The overload's `task`. */
  readonly task: string;
  readonly remedies: readonly DayRemedy[];
  /** Days planned to find them. */
  readonly tried: number;
}

/** The names that borrowed things and one more helper get on faces and paper. */
export interface RemedyNames {
  readonly helper: string;
  readonly ring: string;
  readonly urn: string;
  readonly pot: string;
}

/** Usual sizes of what is borrowed. W, litres, kg. Common practice, no source. */
const usual = { ringW: 2000, urnW: 2200, urnLitres: 8, urnKg: 2.5, potLitres: 10, potKg: 2 };

function freshId(list: readonly { readonly id: string }[], stem: string): string {
  const taken = new Set(list.map((x) => x.id));
  for (let k = 1; ; k += 1) {
    const id = k === 1 ? stem : `${stem}-${k}`;
    if (!taken.has(id)) return id;
  }
}

const defaults = { place: 'indoor' as const, portable: true };

function withBorrowed(event: Event, thing: Borrowed, names: RemedyNames): Event {
  const { kitchen } = event;
  if (thing === 'oven') return { ...event, kitchen: { ...kitchen, ovens: kitchen.ovens + 1 } };
  if (thing === 'counter') return { ...event, kitchen: { ...kitchen, counterPlaces: kitchen.counterPlaces + 2 } };
  if (thing === 'pot') {
    const largest = kitchen.pots.reduce((most, p) => Math.max(most, p.litres), usual.potLitres);
    const pot: Pot = { id: freshId(kitchen.pots, 'borrowed-pot'), name: names.pot, litres: largest, massKg: usual.potKg };
    return { ...event, kitchen: { ...kitchen, pots: [...kitchen.pots, pot] } };
  }
  if (thing === 'urn') {
    const urn: Dispenser = { id: freshId(kitchen.dispensers, 'borrowed-urn'), name: names.urn, litres: usual.urnLitres, massKg: usual.urnKg, insulation: 'heated', brewsW: usual.urnW, fitForMilk: false };
    return { ...event, kitchen: { ...kitchen, dispensers: [...kitchen.dispensers, urn] } };
  }
  const ring: Burner = { id: freshId(kitchen.burners, 'borrowed-ring'), name: names.ring, kind: 'electric', ratedW: usual.ringW, ...defaults };
  return { ...event, kitchen: { ...kitchen, burners: [...kitchen.burners, ring] } };
}

/** Her own job gets other hours; it was she who set them. */
function withOwnMove(event: Event, job: string, at: number): Event {
  const day = dayOf(event);
  const from = Math.round(at);
  return { ...event, dayJobs: { ...day, ownJobs: day.ownJobs.map((o) => (`own/${o.id}` === job ? { ...o, from, to: from + o.minutes } : o)) } };
}

function withMove(event: Event, job: string, at: number): Event {
  const day = dayOf(event);
  const had = day.changes.find((c) => c.job === job);
  const now = { ...had, job, at: Math.round(at), held: 'pinned' as const };
  return { ...event, dayJobs: { ...day, changes: had === undefined ? [...day.changes, now] : day.changes.map((c) => (c.job === job ? now : c)) } };
}

function without(event: Event, dish: string): Event {
  const { kitchen, menu } = event;
  const dispensers = kitchen.dispensers.map((d): Dispenser => {
    if (d.dish !== dish) return d;
    const { dish: _, ...rest } = d;
    return rest;
  });
  const stations = kitchen.stations.map((s) => (s.dishes.includes(dish) ? { ...s, dishes: s.dishes.filter((d) => d !== dish) } : s));
  return { ...event, menu: { ...menu, dishes: menu.dishes.filter((d) => d.id !== dish) }, kitchen: { ...kitchen, dispensers, stations } };
}

/**
 * The event with one remedy made; the event given stays as it is. For an edit: check the result as every edit does.
 * @param names what the new helper or thing is called, in the household's language.
 */
export function withRemedy(event: Event, change: RemedyChange, names: RemedyNames): Event {
  if (change.kind === 'move') return change.own ? withOwnMove(event, change.job, change.at) : withMove(event, change.job, change.at);
  if (change.kind === 'hours') return { ...event, people: event.people.map((p) => (p.id === change.person ? { ...p, from: change.from, to: change.to } : p)) };
  if (change.kind === 'helper') return { ...event, people: [...event.people, { id: freshId(event.people, 'one-more'), name: names.helper, roles: [...change.roles], from: change.from, to: change.to }] };
  if (change.kind === 'borrow') return withBorrowed(event, change.thing, names);
  return without(event, change.dish);
}
