import { calibrate, type Told } from '../calibration';
import type { Event, Frying } from '../event';
import type { Message } from '../words';
import { changeBurner } from './change-burner';
import { changeRecipe } from './change-recipe';
import { setTrial, trialDish } from './set-trial';
import type { EditResult } from './types';

/**
 * Takes over what a real batch told: weight, fry time, water lost and oil into the recipe of its dish, the share that reaches the pan into its
 * burner. One step to undo. A share measured while frying stands above a test with water, as every entered share does.
 * @param only what to take; all that fits when left out.
 */
export function takeTrial(event: Event, id: string, only?: readonly Told[]): EditResult {
  const trial = event.trials?.find((t) => t.id === id);
  if (trial === undefined) return { problem: { id: 'edit.gone', params: { id } }, path: 'trials' };
  const settings = calibrate(event, trial).settings.filter((s) => only?.includes(s.told) ?? true);
  if (settings.length === 0) return { problem: { id: 'edit.trialNothing' }, path: 'trials' };
  const frying: Partial<Record<keyof Frying, number>> = Object.fromEntries(settings.filter((s) => s.told !== 'usefulShare').map((s) => [s.told, s.after]));
  const steps: ((e: Event) => EditResult)[] = [(e) => setTrial(e, { ...trial, taken: true })];
  for (const s of settings) {
    if (s.told === 'usefulShare') steps.push((e) => changeBurner(e, s.of, { usefulShare: s.after }));
  }
  const recipe = event.recipes.find((r) => r.id === settings.find((s) => s.told !== 'usefulShare')?.of);
  const had = recipe?.frying;
  if (recipe !== undefined && had !== undefined) steps.push((e) => changeRecipe(e, recipe.id, { frying: { ...had, ...frying } }));
  const name: Message = { id: 'edit.trialTaken', params: { dish: trialDish(event, trial) } };
  let now = event;
  for (const step of steps) {
    const answer = step(now);
    if ('problem' in answer) return answer;
    now = answer.event;
  }
  return { event: now, name };
}
