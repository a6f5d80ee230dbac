import assert from 'node:assert/strict';
import { clashOf, restricted, searchWithMaximalLags, type ScheduleProblem } from '../../../shared/timeline';
import { scheduleFaults } from '../../bench/check-schedule';
import { anySchedule } from './schedule-random';

/** What holds of one random kitchen. Returns whether it could be scheduled. @throws when something does not hold. */
export function kitchenHolds(problem: ScheduleProblem): boolean {
  const answer = searchWithMaximalLags(problem, 20_000, true);
  assert.notEqual(answer.kind, 'unknown');
  assert.equal(answer.kind === 'found', anySchedule(problem));
  if (answer.kind === 'found') {
    assert.deepEqual(scheduleFaults(problem, answer.starts, answer.makespan), []);
    assert.equal(clashOf(problem, 20_000), null);
    return true;
  }
  const clash = clashOf(problem, 20_000);
  if (clash === null) throw new Error('impossible, and no clash named');
  const { activities, things } = clash;
  // The named set clashes by itself, and with any one fact less it does not.
  assert.equal(anySchedule(restricted(problem, activities, things)), false);
  for (const i of activities) assert.equal(anySchedule(restricted(problem, activities.filter((x) => x !== i), things)), true);
  for (const k of things) assert.equal(anySchedule(restricted(problem, activities, things.filter((x) => x !== k))), true);
  return false;
}
