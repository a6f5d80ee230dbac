import type { Event, Frying, Trial } from '../event';
import { entered, type Term } from '../figure';
import { planKitchen, type PanState } from '../kitchen';

/** A real batch with what the event knows of its dish, pan and burner. */
export interface TrialSubject {
  readonly event: Event;
  readonly trial: Trial;
  readonly recipe: string;
  readonly frying: Frying;
  readonly state: PanState;
  /** Place of the burner in the event's list; below 0 when the pan names none that exists. */
  readonly burnerAt: number;
  /** An input measured in the batch, as a term. */
  readonly measured: (key: string, word: string, value: number, unit: string, field: string) => Term;
  /** A value of the recipe, as a term. */
  readonly ofRecipe: (key: string, word: string, value: number, unit: string) => Term;
}

/** Finds dish, pan and burner of a real batch; null when the dish is not fried any more or the pan is gone. */
export function trialSubject(event: Event, trial: Trial): TrialSubject | null {
  const dish = event.menu.dishes.find((d) => d.id === trial.dish);
  const recipe = event.recipes.find((r) => r.id === dish?.recipe);
  const state = planKitchen(event).pans.find((p) => p.pan.id === trial.pan);
  if (recipe?.frying === undefined || state === undefined) return null;
  const at = Math.max(0, (event.trials ?? []).findIndex((t) => t.id === trial.id));
  return {
    event, trial, recipe: recipe.id, frying: recipe.frying, state, burnerAt: event.kitchen.burners.findIndex((b) => b.id === state.pan.burner),
    measured: (key, word, value, unit, field) => entered(key, { word }, value, unit, `trials[${at}].${field}`),
    ofRecipe: (key, word, value, unit) => ({ key, label: { word }, value, unit, origin: { kind: 'recipe', recipe: recipe.id } }),
  };
}
