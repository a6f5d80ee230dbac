import type { Plan } from '../plan';
import { say, sayMessage, type Formats } from '../words';
import { amountChanges } from './amount-changes';
import { buyChanges } from './buy-changes';
import { changeKinds, type Change } from './change';
import { safetyChanges } from './safety-changes';
import { timeChanges } from './time-changes';

/**
 * What is not the same in two plans: first what is unsafe or safe again, then what to buy, then what moves on the clock, then how much;
 * inside each the largest first. Differences below kitchen rounding, whole portions and minutes are none.
 */
export function changes(before: Plan, after: Plan): Change[] {
  if (before === after) return [];
  const all = [
    ...safetyChanges(before.safety, after.safety), ...buyChanges(before.buying, after.buying, after.event.preferences.units),
    ...timeChanges(before, after), ...amountChanges(before, after),
  ];
  return changeKinds.flatMap((kind) => all.filter((change) => change.kind === kind).toSorted((a, b) => b.size - a.size));
}

/** The changes that matter most, at most `count`, in the order they are told. */
export function largestChanges(all: readonly Change[], count = 3): Change[] {
  const chosen = new Set(all.toSorted((a, b) => b.size - a.size).slice(0, count));
  return all.filter((change) => chosen.has(change));
}

/** Every change as a line of text for the terminal; one line when there is none. */
export function compareText(before: Plan, after: Plan, formats: Formats): string {
  const all = changes(before, after);
  return all.length === 0 ? say(formats, 'change.none') : all.map((change) => sayMessage(formats, change.message)).join('\n');
}
