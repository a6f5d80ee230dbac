import type { Event } from '../event';
import { settled } from './check';
import { trialDish } from './set-trial';
import type { EditResult } from './types';

/** Takes a batch really fried out of the event. What was taken from it stays. */
export function removeTrial(event: Event, id: string): EditResult {
  const had = event.trials ?? [];
  const trial = had.find((t) => t.id === id);
  if (trial === undefined) return { problem: { id: 'edit.gone', params: { id } }, path: 'trials' };
  const { trials: _all, ...without } = event;
  const left = had.filter((t) => t.id !== id);
  return settled(left.length === 0 ? without : { ...event, trials: left }, { id: 'edit.trialOut', params: { dish: trialDish(event, trial) } });
}
