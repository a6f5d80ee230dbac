import { highest, lowest } from '../measure';
import type { Message } from '../words';
import { lengthOf, type Placed } from './job';
import { profilesOf, type Resources } from './resources';
import { clashOf, type ScheduleProblem } from './schedule';
import type { Clash } from './types';

/** A job's use of one kind of thing: from when to when it may lie, in whole minutes. */
interface Use {
  readonly placed: Placed;
  readonly task: string;
  readonly name: Message;
  readonly minutes: number;
  readonly earliest: number;
  readonly latest: number;
  readonly count: number;
}

/** Neighbours looked at, and steps for each question; more would not be read and would not be quick. */
const looks = { neighbours: 10, steps: 2000 };

/** Uses of a thing by a job, stretches that follow each other joined; each where the plan has it when `standing`, else anywhere in its window. */
function usesOf(resources: Resources, p: Placed, profile: unknown, standing: boolean): Use[] {
  const length = lengthOf(p.job);
  const first = standing ? p.start : Math.max(p.job.earliest, p.job.notDoneBefore - length);
  const last = standing ? p.start : p.job.latest - length;
  const held: { task: string; name: Message; count: number; from: number; to: number }[] = [];
  let from = 0;
  for (const s of p.job.stretches) {
    const to = from + s.minutes;
    const count = s.needs.reduce((n, need) => n + (profilesOf(resources, need).some((x) => x === profile) ? need.count : 0), 0);
    const before = held.at(-1);
    if (before !== undefined && before.count === count && before.to === from) before.to = to;
    else if (count > 0) held.push({ task: s.id, name: s.name, count, from, to });
    from = to;
  }
  return held.filter((h) => h.to - h.from >= 1).map((h) => {
    const [earliest, minutes] = [Math.floor(first + h.from + 1e-9), Math.floor(h.to - h.from)];
    return { placed: p, task: h.task, name: h.name, count: h.count, minutes, earliest, latest: Math.max(earliest + minutes, Math.ceil(last + h.to - 1e-9)) };
  });
}

/**
 * The smallest set of jobs that clash over a thing this job could not have: none of them can be left out of the sentence. First with every
 * job anywhere in its window; where that would do, with the others where the plan has them. Null when it is not the things alone.
 */
export function thingClash(resources: Resources, placed: readonly Placed[], p: Placed): Clash | null {
  for (const need of p.job.stretches.flatMap((s) => s.needs)) for (const profile of profilesOf(resources, need)) {
    for (const standing of [false, true]) {
      const own = usesOf(resources, p, profile, false);
      const span = { from: lowest(own.map((u) => u.earliest)), to: highest(own.map((u) => u.latest)) };
      const others = placed.filter((o) => o !== p && o.things).flatMap((o) => usesOf(resources, o, profile, standing)).filter((u) => u.earliest < span.to && u.latest > span.from)
        .toSorted((a, b) => Math.abs(a.placed.start - p.start) - Math.abs(b.placed.start - p.start)).slice(0, looks.neighbours);
      const uses = [...others, ...own];
      const origin = lowest(uses.map((u) => u.earliest), 0);
      const problem: ScheduleProblem = {
        durations: uses.map((u) => u.minutes), demands: uses.map((u) => [u.count]), capacities: [profile.capacity], lags: [],
        earliest: uses.map((u) => u.earliest - origin), latest: uses.map((u) => u.latest - origin),
      };
      const clash = clashOf(problem, looks.steps);
      const named = (clash?.activities ?? []).flatMap((i) => uses[i] ?? []);
      if (named.length < 2) continue;
      const [kind = need.thing] = need.thing.split(':');
      const [from, to] = [lowest(named.map((u) => u.earliest)), highest(named.map((u) => u.latest))];
      return { tasks: named.map((u) => u.task), message: { id: 'timeline.clash.things', params: { thing: kind, has: profile.capacity, from, to, jobs: named.map((u) => u.name) } } };
    }
  }
  return null;
}
