import { readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { ClashRemedies, DayRemedy } from '../../../shared/timeline';
import { parseEvent } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { troubles, type Trouble } from '../../../src-renderer/views/day/trouble';
import { waysOf } from '../../../src-renderer/views/day/ways';

const trouble = (...clashes: string[]): Trouble => ({ key: clashes.join(' '), at: 600, title: { id: 'timeline.task.serve' }, sentences: [], clashes });
const remedy = (thing: 'ring' | 'pot' | 'oven' | 'counter' | 'urn', alsoEnds: readonly string[] = []): DayRemedy =>
  ({ change: { kind: 'borrow', thing }, message: { id: 'timeline.remedy.borrow', params: { thing } }, cost: { lateMinutes: 0, movedMinutes: 0, helperMinutes: 0, otherJobs: 2 }, alsoEnds });
const clash = (task: string, ...remedies: DayRemedy[]): ClashRemedies => ({ task, remedies, tried: 5 });
const things = (ways: ReturnType<typeof waysOf>): string[] => ways.map((w) => (w.remedy.change.kind === 'borrow' ? w.remedy.change.thing : ''));

describe('ways out', () => {
  it('of one trouble are its own, cheapest first as they were found', () => {
    const all = [clash('a', remedy('ring'), remedy('pot')), clash('b', remedy('oven'))];
    expect(things(waysOf([trouble('a')], all))).toEqual(['ring', 'pot']);
    expect(things(waysOf([trouble('b')], all))).toEqual(['oven']);
    expect(waysOf([trouble('c')], all)).toEqual([]);
  });

  it('that end most of several come first; what ends elsewhere is counted apart', () => {
    const all = [clash('a', remedy('ring'), remedy('pot', ['b', 'z'])), clash('b', remedy('oven'))];
    const ways = waysOf([trouble('a', 'b')], all);
    expect(things(ways)).toEqual(['pot', 'ring', 'oven']);
    expect(ways.map(({ ends, of, elsewhere }) => [ends, of, elsewhere])).toEqual([[2, 2, 1], [1, 2, 0], [1, 2, 0]]);
  });

  it('are told once each, three at most, and never end more than there is', () => {
    const names = ['a', 'b', 'c', 'd'] as const;
    const anyRemedy = fc.record({ thing: fc.constantFrom('ring' as const, 'pot' as const, 'oven' as const, 'counter' as const, 'urn' as const), also: fc.subarray([...names, 'z']) }).map(({ thing, also }) => remedy(thing, also));
    const found = fc.uniqueArray(fc.record({ task: fc.constantFrom(...names), remedies: fc.array(anyRemedy, { maxLength: 3 }) }).map(({ task, remedies }) => clash(task, ...remedies)), { selector: (c) => c.task });
    fc.assert(fc.property(found, fc.subarray([...names], { minLength: 1 }), (all, clashes) => {
      const ways = waysOf(clashes.map((c) => trouble(c)), all);
      expect(ways.length).toBeLessThanOrEqual(3);
      expect(new Set(things(ways)).size).toBe(ways.length);
      for (const [at, way] of ways.entries()) {
        expect(way.of).toBe(clashes.length);
        expect(way.ends).toBeLessThanOrEqual(way.of);
        expect(way.ends).toBeGreaterThanOrEqual(ways[at + 1]?.ends ?? 1);
      }
    }));
  });
});

describe('what does not fit', () => {
  it('names the clashing set behind its sentence, and the clashes it is made of', () => {
    const read = parseEvent(readFileSync('assets/app/demo/school-fair-stall.brimful', 'utf8'));
    if (!read.ok) throw new Error('the demo does not open');
    const made = plan(read.event);
    const [first, second] = made.day.tasks.filter((t) => t.attention > 0 && t.who.length > 0);
    if (first === undefined || second === undefined) throw new Error('the demo has jobs');
    const message = { id: 'timeline.overload.early', params: { minutes: 5 } } as const;
    const set = { tasks: [first.id, second.id], message: { id: 'timeline.clash.things', params: { thing: 'burner', has: 1, from: 600, to: 640, jobs: [first.name, second.name] } } } as const;
    const told = troubles({ ...made, day: { ...made.day, overloads: [{ task: first.id, lateMinutes: 0, also: [], message, clash: set }, { task: second.id, lateMinutes: 0, also: [], message }] } });
    expect(told.map((o) => [o.clashes, o.sentences])).toEqual([[[first.id], [message, set.message]], [[second.id], [message]]]);
  });
});
