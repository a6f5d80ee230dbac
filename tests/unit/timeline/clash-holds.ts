import assert from 'node:assert/strict';
import type { Event } from '../../../shared/event';
import { planDay, type Overload, type Task, type TimelinePlan } from '../../../shared/timeline';
import { faultsOf } from './check-day';
import { dayEvent, inputsOf, type TestDay } from './make-day';

/** A fact of the sentence: a job where the plan has it, or the hours of somebody. */
interface Fact { readonly tasks: readonly Task[]; readonly away: string | null }

const oil = new Set(['watchOil', 'fry', 'heatOil']);
const overlap = (a: { start: number; end: number }, from: number, to: number): boolean => a.start < to - 1e-9 && a.end > from + 1e-9;

/** Every task of the job a named task belongs to; of a watch at the oil everything its person does there until the next. */
function factOf(plan: TimelinePlan, id: string): Fact {
  const first = plan.tasks.find((t) => t.id === id);
  assert.ok(first, `${id} is a task of the day`);
  const [who] = first.who;
  if (first.kind !== 'watchOil' || who === undefined) return { tasks: plan.tasks.filter((t) => t.job === first.job), away: null };
  const there = plan.tasks.filter((t) => oil.has(t.kind) && t.who.includes(who));
  const spell = { start: Number(first.start), end: Number(first.end) };
  for (let grown = true; grown;) {
    const next = there.filter((t) => t.kind === 'watchOil' && t.start <= spell.end + 1e-9 && t.end >= spell.start - 1e-9);
    const [start, end] = [Math.min(...next.map((t) => t.start)), Math.max(...next.map((t) => t.end))];
    grown = start < spell.start || end > spell.end;
    Object.assign(spell, { start, end });
  }
  return { tasks: there.filter((t) => overlap(t, spell.start, spell.end)), away: null };
}

/** Reads minute by minute, without the planner's code, whether a job has a start between `from` and `to` with these facts standing and nothing else. */
export function hasStart(event: Event, job: readonly Task[], facts: readonly Fact[], from: number, to: number): boolean {
  const [first] = job;
  assert.ok(first);
  const length = job.at(-1)!.end - first.start;
  const stands = facts.flatMap((f) => f.tasks);
  const ids = new Set(job.map((t) => t.id));
  const capacity = new Map<string, number>([['burner', event.kitchen.burners.length], ['pot', event.kitchen.pots.length], ['pan', event.kitchen.pans.length], ['oven', event.kitchen.ovens], ['counter', event.kitchen.counterPlaces]]);
  const free = (who: string, start: number): boolean => {
    const person = event.people.find((p) => p.id === who)!;
    const away = facts.some((f) => f.away === person.name);
    return job.every((t) => {
      if (t.attention === 0) return true;
      const [a, b] = [start + t.start - first.start, start + t.end - first.start];
      if (away && (a < person.from - 1e-9 || b > person.to + 1e-9)) return false;
      for (let at = a + 0.25; at < b; at += 0.5) {
        let sum = t.attention;
        for (const o of stands) if (o.who.includes(who) && o.start <= at && o.end > at) sum += oil.has(o.kind) ? 1 : o.attention;
        if (sum > 1 + 1e-9) return false;
      }
      return true;
    });
  };
  const thingsFree = (start: number): boolean => job.every((t) => needsOf(event, t).every((n) => {
    const [kind = ''] = n.thing.split(':');
    for (let at = start + t.start - first.start + 0.25; at < start + t.end - first.start; at += 0.5) {
      const used = (test: (thing: string) => boolean) => stands.reduce((sum, o) => sum + (o.start <= at && o.end > at ? o.needs.filter((x) => test(x.thing)).reduce((m, x) => m + x.count, 0) : 0), 0);
      if (used((x) => x.split(':')[0] === kind) + n.count > (capacity.get(kind) ?? 0)) return false;
      if (n.thing !== kind && used((x) => x === n.thing) > 0) return false;
    }
    return true;
  }));
  const hands = job.some((t) => t.attention > 0);
  const ordered = (start: number): boolean => stands.every((o) => (!first.after.includes(o.id) || o.end <= start + 1e-9) && (!o.after.some((id) => ids.has(id)) || o.start >= start + length - 1e-9));
  const starts = new Set<number>([from, to - length]);
  for (let s = Math.ceil(from); s <= to - length + 1e-9; s += 1) starts.add(s);
  return [...starts].some((s) => s <= to - length + 1e-9 && ordered(s) && thingsFree(s) && (!hands || event.people.some((p) => free(p.id, s))));
}

/** What a task would take of things, also where it could have nothing: as its step says. */
function needsOf(event: Event, t: Task): readonly { readonly thing: string; readonly count: number }[] {
  if (t.needs.length > 0) return t.needs;
  if (t.kind === 'brew') {
    // Rounds of test days stand on the last burner in the last pot.
    const pot = { thing: `pot:${event.kitchen.pots.at(-1)!.id}`, count: 1 };
    return t.id.endsWith('/off-heat') || t.id.endsWith('/finish') ? [pot] : [pot, { thing: `burner:${event.kitchen.burners.at(-1)!.id}`, count: 1 }];
  }
  if (t.kind === 'bowl') return [{ thing: 'counter', count: 1 }];
  if (t.kind !== 'step') return [];
  const step = event.recipes.find((r) => r.id === t.dish)?.steps.find((s) => s.id === t.id.split('/')[1]);
  return step?.needs ?? [];
}

/** Checks a named clash of hands: with all its facts the job has no start, with any one fact less it has. */
function clashHolds(event: Event, plan: TimelinePlan, overload: Overload): void {
  const { clash } = overload;
  if (clash?.message.id !== 'timeline.clash.hands') return;
  const { from, to, away } = clash.message.params;
  const job = factOf(plan, clash.tasks[0]!).tasks;
  const facts: Fact[] = [...clash.tasks.slice(1).map((id) => factOf(plan, id)), ...away.map((name) => ({ tasks: [], away: name }))];
  assert.equal(hasStart(event, job, facts, from, to), false, `${overload.task}: the named jobs leave room`);
  for (const f of facts) assert.equal(hasStart(event, job, facts.filter((x) => x !== f), from, to), true, `${overload.task}: ${f.away ?? f.tasks[0]?.id} can be left out of the sentence`);
}

/** What holds of one random kitchen: the plan is accepted by an independent reader, and every named clash of hands is true and has nothing too much. Counts the clashes. */
export function dayHolds(d: TestDay): { readonly clashes: number; readonly named: number } {
  const event = dayEvent(d);
  const plan = planDay(event, inputsOf(d, event));
  assert.deepEqual(faultsOf(event, plan), []);
  for (const o of plan.overloads) clashHolds(event, plan, o);
  return { clashes: plan.overloads.length, named: plan.overloads.filter((o) => o.clash !== undefined).length };
}
