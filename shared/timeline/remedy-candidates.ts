import type { Event } from '../event';
import { highest, lowest } from '../measure';
import type { Message } from '../words';
import type { Borrowed, RemedyChange } from './remedies';
import type { Overload, Task, TimelinePlan } from './types';

/** A change worth planning: what it says, and how much trouble it is before it is planned. */
export interface RemedyCandidate {
  readonly change: RemedyChange;
  readonly message: Message;
  /** Minutes' worth of trouble; only compared. */
  readonly trouble: number;
  /** Of each kind one is offered; the cook's own job and a recipe step count as two kinds. */
  readonly kind: string;
  readonly movedMinutes: number;
  readonly helperMinutes: number;
}

/** Trouble of each kind in minutes' worth. Common practice, no source. */
const trouble = { own: 1, step: 5, perMinute: 0.3, hours: 15, borrow: 30, helper: 40, drop: 500 };

/** How far a job is moved and a helper's hours are lengthened at most. Minutes; common practice, no source. */
const furthest = 240;

interface Scene {
  readonly event: Event;
  readonly day: TimelinePlan;
  /** Tasks the clash speaks of, and those that stand where its first task stands. */
  readonly named: readonly Task[];
  readonly near: readonly Task[];
  readonly from: number;
  readonly to: number;
  readonly roles: readonly string[];
  /** From the first to the last clash that lies near this one. */
  readonly clashing: { readonly from: number; readonly to: number };
}

const movable = (t: Task): boolean => t.held === undefined && t.kind !== 'fry' && t.kind !== 'watchOil' && t.kind !== 'heatOil' && t.kind !== 'bowl' && t.kind !== 'brew' && t.kind !== 'fill' && t.kind !== 'rest';

function sceneOf(event: Event, day: TimelinePlan, overload: Overload): Scene | null {
  const byId = new Map(day.tasks.map((t) => [t.id, t]));
  const named = [...new Set([overload.task, ...overload.also, ...(overload.clash?.tasks ?? [])])].flatMap((id) => byId.get(id) ?? []);
  const first = byId.get(overload.task);
  if (first === undefined) return null;
  const own = [overload.task, ...overload.also].flatMap((id) => byId.get(id) ?? []);
  // What is done too early wants hands and things later, at its own time.
  const early = overload.message.id === 'timeline.overload.early' ? overload.message.params.minutes : 0;
  const from = lowest(own.map((t) => t.start)) + early;
  const to = highest(own.map((t) => t.end)) + early;
  const near = day.tasks.filter((t) => !named.includes(t) && t.start < to && t.end > from && (t.attention > 0 || t.needs.length > 0));
  const others = day.overloads.flatMap((o) => [o.task, ...o.also].flatMap((id) => byId.get(id) ?? [])).filter((t) => Math.abs(t.start - from) <= furthest);
  const clashing = { from: lowest(others.map((t) => t.start), from), to: highest(others.map((t) => t.end), to) };
  return { event, day, named, near, from, to, roles: first.roles ?? [], clashing };
}

/** Jobs moved so that they are done before the clash begins, or begin when it is over. */
function moves({ named, near, from, to, day }: Scene): RemedyCandidate[] {
  const jobs = new Map<string, { start: number; end: number; first: Task }>();
  const wanted = new Set([...named, ...near].filter(movable).map((t) => t.job ?? t.id));
  for (const t of day.tasks) {
    const job = t.job ?? t.id;
    if (!wanted.has(job)) continue;
    const had = jobs.get(job);
    jobs.set(job, had === undefined ? { start: t.start, end: t.end, first: t } : { ...had, end: Math.max(had.end, t.end) });
  }
  return [...jobs].flatMap(([job, { start, end, first }]): RemedyCandidate[] => {
    const own = first.kind === 'own';
    const places = [from - (end - start), from - (end - start) - 15, from - (end - start) - 45, to, to + 15];
    return places.map((p) => Math.round(p)).filter((at, k, all) => at !== Math.round(start) && Math.abs(at - start) <= furthest && all.indexOf(at) === k).map((at) => {
      const movedMinutes = Math.round(Math.abs(at - start));
      return {
        change: { kind: 'move', job, at, own }, kind: own ? 'own' : 'move', movedMinutes, helperMinutes: 0, trouble: (own ? trouble.own : trouble.step) + trouble.perMinute * movedMinutes,
        message: { id: at < start ? 'timeline.remedy.earlier' : 'timeline.remedy.later', params: { job: first.name, at: start, to: at } },
      };
    });
  });
}

function hands({ event, from, to, roles, clashing }: Scene): RemedyCandidate[] {
  const [first, last] = [Math.max(0, Math.floor(from)), Math.ceil(to)];
  const longer = event.people.flatMap((p): RemedyCandidate[] => {
    if (p.from <= first && p.to >= last) return [];
    const [start, end] = [Math.min(p.from, first), Math.max(p.to, last)];
    const minutes = p.from - start + end - p.to;
    if (minutes > furthest) return [];
    const able = roles.length === 0 || roles.some((r) => p.roles.includes(r));
    return [{
      change: { kind: 'hours', person: p.id, from: start, to: end }, kind: 'hours', movedMinutes: 0, helperMinutes: minutes, trouble: trouble.hours + trouble.perMinute * minutes + (able ? 0 : 5),
      message: { id: 'timeline.remedy.hours', params: { person: p.name, from: start, to: end } },
    }];
  });
  const asked = [...new Set(roles.filter((r) => !r.startsWith('person:')))];
  const one = (start: number, end: number): RemedyCandidate => ({
    change: { kind: 'helper', roles: asked.length === 0 ? ['runner'] : asked, from: start, to: end }, kind: 'helper', movedMinutes: 0, helperMinutes: end - start, trouble: trouble.helper + trouble.perMinute * (end - start),
    message: { id: 'timeline.remedy.helper', params: { from: start, to: end, role: asked[0] ?? 'runner' } },
  });
  if (last <= first) return longer;
  // Just for these minutes; with an hour round them; for as long as anything clashes near here.
  const spans = [[first, last], [Math.max(0, roundTo(first - 30)), roundTo(last + 30)], [Math.max(0, roundTo(Math.min(first, clashing.from))), roundTo(Math.max(last, clashing.to) + 15)]] as const;
  return [...longer, ...spans.filter(([a, b], k) => spans.findIndex(([c, d]) => c === a && d === b) === k).map(([a, b]) => one(a, b))];
}

/** To the quarter of an hour: nobody is asked to come at 13:29. */
const roundTo = (minute: number): number => Math.floor(minute / 15) * 15;


const lends: Readonly<Record<string, readonly Borrowed[]>> = { burner: ['ring', 'urn'], pot: ['pot', 'urn'], oven: ['oven'], counter: ['counter'], urn: ['urn'] };

/** The kind of thing a clash is over, null when it is hands. */
function thingOf({ message, clash }: Overload): string | null {
  for (const m of [clash?.message, message]) if (m?.id === 'timeline.clash.things' || m?.id === 'timeline.overload.thing') return m.params.thing;
  return null;
}

function borrowing(overload: Overload, { day }: Scene): RemedyCandidate[] {
  const thing = thingOf(overload);
  const pinned = day.tasks.find((t) => t.id === overload.task)?.needs ?? [];
  const kinds = thing !== null ? [thing] : overload.message.id === 'timeline.overload.early' || overload.message.id === 'timeline.pin.thing' ? [...new Set(pinned.map((n) => n.thing.split(':')[0] ?? n.thing))] : [];
  return kinds.flatMap((k) => lends[k] ?? []).map((b, at) => ({ change: { kind: 'borrow', thing: b }, kind: 'borrow', movedMinutes: 0, helperMinutes: 0, trouble: trouble.borrow + at, message: { id: 'timeline.remedy.borrow', params: { thing: b } } }));
}

function drops({ event, named, near }: Scene): RemedyCandidate[] {
  const dishes = new Set([...named, ...near].flatMap((t) => t.dish ?? []));
  return event.menu.dishes.filter((d) => dishes.has(d.id)).map((d, at) => {
    const name = d.name ?? event.recipes.find((r) => r.id === d.recipe)?.name ?? d.id;
    return { change: { kind: 'drop', dish: d.id }, kind: 'drop', movedMinutes: 0, helperMinutes: 0, trouble: trouble.drop + at, message: { id: 'timeline.remedy.drop', params: { dish: name } } };
  });
}

/** Changes that may end a clash, least trouble first. None of them is planned yet. */
export function remedyCandidates(event: Event, day: TimelinePlan, overload: Overload): RemedyCandidate[] {
  const scene = sceneOf(event, day, overload);
  if (scene === null) return [];
  return [...moves(scene), ...hands(scene), ...borrowing(overload, scene), ...drops(scene)].toSorted((a, b) => a.trouble - b.trouble);
}
