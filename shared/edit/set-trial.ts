import { trialSchema, trialsSchema, type Event, type Trial } from '../event';
import { checkPart, settled } from './check';
import { dishes } from './lists';
import { placeOfRow, setRow } from './set-row';
import type { EditResult } from './types';

/** Name of the dish a real batch is of. */
export function trialDish(event: Event, trial: Trial): string {
  const dish = dishes.get(event).find((d) => d.id === trial.dish);
  return dish === undefined ? trial.dish : dishes.nameOf(dish, event);
}

/** Writes down a batch really fried: a new one, or in place of the one with its id. What it tells is taken by `takeTrial`. */
export function setTrial(event: Event, trial: Trial): EditResult {
  const trials = event.trials ?? [];
  const isIt = (row: Trial): boolean => row.id === trial.id;
  const checked = checkPart(trialSchema, trial, ['trials', placeOfRow(trials, isIt)]);
  if (!checked.ok) return checked.problem;
  const list = checkPart(trialsSchema, setRow(trials, isIt, checked.value), ['trials']);
  return list.ok ? settled({ ...event, trials: list.value }, { id: 'edit.trial', params: { dish: trialDish(event, trial) } }) : list.problem;
}
