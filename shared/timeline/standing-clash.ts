import type { Message } from '../words';
import { highest, lowest } from '../measure';
import { lengthOf, type Placed } from './job';
import { profilesOf, type Resources } from './resources';
import type { Clash } from './types';

/** So much of a person or a thing, by key, from when to when. */
interface Use {
  readonly key: unknown;
  readonly amount: number;
  readonly from: number;
  readonly to: number;
}

/** Something that stands: a job where the plan has it, or the hours of a helper. Leaving it out gives back what it takes. */
interface Fact {
  readonly task: string | null;
  readonly name: Message | null;
  readonly person: string | null;
  readonly uses: readonly Use[];
  /** Latest end and earliest start it leaves the job in question. */
  readonly endBy: number;
  readonly since: number;
}

/** The job in question: what it takes, in minutes from its start, and where it may start. */
interface Asked {
  readonly hands: readonly Use[];
  readonly things: readonly Use[];
  readonly helpers: readonly unknown[];
  readonly capacity: ReadonlyMap<unknown, number>;
  readonly low: number;
  readonly high: number;
  readonly length: number;
}

/** Facts looked at, those nearest to the job first: more would not be read. */
const mostFacts = 40;
const atOil = (p: Placed): boolean => p.job.kind === 'watchOil' || p.job.kind === 'fry' || p.job.kind === 'heatOil';

function usesOf(resources: Resources, p: Placed, start: number, person: string | null): { readonly hands: Use[]; readonly things: Use[] } {
  const [hands, things]: [Use[], Use[]] = [[], []];
  let from = start;
  for (const s of p.job.stretches) {
    const to = from + s.minutes;
    if (s.attention > 0) hands.push({ key: person, amount: s.attention, from, to });
    for (const need of s.needs) {
      for (const profile of profilesOf(resources, need)) things.push({ key: profile, amount: need.count, from, to });
      const power = resources.power.get(need.thing);
      if (power !== undefined) things.push({ key: power.profile, amount: power.watts, from, to });
    }
    from = to;
  }
  return { hands, things };
}

function factOf(resources: Resources, p: Placed, o: Placed): Fact {
  const { hands, things } = usesOf(resources, o, o.start, o.who);
  const first = o.job.stretches[0];
  return {
    task: first?.id ?? o.job.id, name: first?.name ?? null, person: null, uses: [...(o.who === null || o.home || atOil(o) ? [] : hands), ...(o.things ? things : [])],
    endBy: o.job.after.includes(p.job.id) ? o.start : Number.POSITIVE_INFINITY, since: p.job.after.includes(o.job.id) ? o.start + lengthOf(o.job) : Number.NEGATIVE_INFINITY,
  };
}

/** Hours of the helpers. */
const hoursOf = ({ helpers }: Resources): Fact[] => helpers.map(({ person }) => ({
  task: null, name: null, person: person.name, endBy: Number.POSITIVE_INFINITY, since: Number.NEGATIVE_INFINITY,
  uses: [{ key: person.id, amount: 1, from: Number.NEGATIVE_INFINITY, to: person.from }, { key: person.id, amount: 1, from: person.to, to: Number.POSITIVE_INFINITY }],
}));

/** Who is at the oil, all of them for as long as they stand there without a gap: one fact however many pans they watch. */
function watchesOf(resources: Resources, placed: readonly Placed[], p: Placed): Fact[] {
  const oil = placed.filter((o) => o !== p && atOil(o) && o.who !== null);
  return resources.helpers.flatMap(({ person, atOil: spells }) => {
    const joined: { from: number; to: number }[] = [];
    for (const { from, to } of spells.toSorted((a, b) => a.from - b.from)) {
      const last = joined.at(-1);
      if (last !== undefined && from <= last.to + 1e-9) last.to = Math.max(last.to, to);
      else joined.push({ from, to });
    }
    return joined.flatMap(({ from, to }): Fact[] => {
      const there = oil.filter((o) => o.who === person.id && o.start < to - 1e-9 && o.start + lengthOf(o.job) > from + 1e-9);
      const watch = there.find((o) => o.job.kind === 'watchOil')?.job.stretches[0];
      if (watch === undefined) return [];
      const facts = there.map((o) => factOf(resources, p, o));
      return [{
        task: watch.id, name: watch.name, person: null, uses: [{ key: person.id, amount: 1, from, to }, ...facts.flatMap((f) => f.uses)],
        endBy: lowest(facts.map((f) => f.endBy)), since: highest(facts.map((f) => f.since)),
      }];
    });
  });
}

/** True when so much more fits beside these uses throughout. */
function fitsBeside(uses: readonly Use[], capacity: number, amount: number, from: number, to: number): boolean {
  const there = uses.filter((u) => u.from < to - 1e-9 && u.to > from + 1e-9);
  return [from, ...there.map((u) => Math.max(from, u.from))].every((t) => there.reduce((sum, u) => (u.from <= t + 1e-9 && u.to > t + 1e-9 ? sum + u.amount : sum), 0) + amount <= capacity + 1e-9);
}

/** True when the job has a start with these facts standing. Only starts right after or before something are worth trying. */
function fits(asked: Asked, facts: readonly Fact[]): boolean {
  const low = facts.reduce((most, f) => Math.max(most, f.since), asked.low);
  const high = facts.reduce((least, f) => Math.min(least, f.endBy - asked.length), asked.high);
  if (high < low - 1e-9) return false;
  const byKey = new Map<unknown, Use[]>();
  for (const f of facts) for (const u of f.uses) {
    const list = byKey.get(u.key);
    if (list === undefined) byKey.set(u.key, [u]);
    else list.push(u);
  }
  const own = [...asked.hands, ...asked.things];
  const starts = new Set([low, high]);
  for (const list of byKey.values()) for (const u of list) for (const o of own) for (const s of [Math.ceil(u.to - o.from - 1e-9), Math.floor(u.from - o.to + 1e-9)]) if (s >= low - 1e-9 && s <= high + 1e-9) starts.add(s);
  const freeOf = (key: unknown, capacity: number, list: readonly Use[], s: number): boolean => list.every((o) => fitsBeside(byKey.get(key) ?? [], capacity, o.amount, s + o.from, s + o.to));
  return [...starts].some((s) => asked.things.every((o) => freeOf(o.key, asked.capacity.get(o.key) ?? 0, [o], s)) && (asked.hands.length === 0 || asked.helpers.some((h) => freeOf(h, 1, asked.hands, s))));
}

/** Leaves out every fact without which the rest still clash: from those left none can be taken away. */
function smallest(asked: Asked, facts: readonly Fact[]): readonly Fact[] {
  // Short jobs are left out first: fewer remain, and those that matter.
  let left: readonly Fact[] = facts;
  for (const f of facts.map((fact) => ({ fact, minutes: fact.uses.reduce((sum, u) => sum + u.to - u.from, 0) })).toSorted((a, b) => a.minutes - b.minutes).map((x) => x.fact)) {
    const rest = left.filter((x) => x !== f);
    if (!fits(asked, rest)) left = rest;
  }
  return left;
}

/**
 * Why a job found nobody, or nothing to do it with, in its time: the jobs that stand in its way where the plan has them, and the helpers who
 * are not there. None of them can be left out: without any one of them the job has a start, with somebody who does it. Null when it is
 * not that (its time is too short for it), or a day before would do as well.
 * Source: deletion filter, Chinneck and Dravnieks 1991 (from memory).
 */
export function standingClash(resources: Resources, placed: readonly Placed[], p: Placed): Clash | null {
  const { job } = p;
  const length = lengthOf(job);
  const [low, high] = [Math.max(job.earliest, job.notDoneBefore - length), job.latest - length];
  if (low < 0 && (job.anyTime || job.kind === 'step')) return null;
  const { hands, things } = usesOf(resources, p, 0, null);
  const asked: Asked = {
    hands, things, low, high: atOil(p) ? low : high, length, helpers: resources.helpers.map((h) => h.person.id),
    capacity: new Map([...resources.things.values()].map((profile) => [profile, profile.capacity])),
  };
  if (!fits(asked, [])) return null;
  const near = placed.filter((o) => o !== p && !(atOil(o) && o.who !== null) && o.start < high + length && o.start + lengthOf(o.job) > low).map((o) => ({ o, far: Math.abs(o.start - p.start) }))
    .toSorted((a, b) => a.far - b.far).slice(0, mostFacts).map(({ o }) => factOf(resources, p, o)).filter((f) => f.uses.length > 0 || f.endBy < Number.POSITIVE_INFINITY || f.since > Number.NEGATIVE_INFINITY);
  const facts = [...hoursOf(resources), ...watchesOf(resources, placed, p)].filter((f) => f.uses.some((u) => u.from < high + length && u.to > low)).concat(near);
  if (fits(asked, facts)) return null;
  const named = smallest(asked, facts);
  const jobs = named.flatMap((f) => (f.task === null || f.name === null ? [] : [{ task: f.task, name: f.name }]));
  if (jobs.length === 0) return null;
  const away = named.flatMap((f) => f.person ?? []);
  const first = job.stretches[0];
  return {
    tasks: [first?.id ?? job.id, ...jobs.map((j) => j.task)],
    message: {
      id: 'timeline.clash.hands',
      params: { from: lowest([low]), to: highest([asked.high + length]), job: first?.name ?? { id: 'timeline.task.serve' }, jobs: jobs.map((j) => j.name), has: resources.helpers.length, away },
    },
  };
}
