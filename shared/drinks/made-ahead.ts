import type { Recipe, Step } from '../event';

const heats = (step: Step): boolean => step.does === 'boil' || step.does === 'simmer' || step.needs.some((n) => n.thing === 'burner');
const stored = (step: Step): boolean => step.does === 'chill' || step.keeps !== undefined;

/**
 * True when a recipe's own steps make the whole drink before its rounds: a cold drink with a step on the heat, and a step after it that
 * chills or keeps the result. Its rounds pour from what those steps made; nothing raw goes into them.
 */
export function isMadeAhead(recipe: Recipe): boolean {
  if (recipe.brewing?.method !== 'cold') return false;
  const byId = new Map(recipe.steps.map((s) => [s.id, s]));
  const heatedBefore = (step: Step, seen: readonly string[]): boolean => step.after.some((id) => {
    const before = byId.get(id);
    return before !== undefined && !seen.includes(id) && (heats(before) || heatedBefore(before, [...seen, id]));
  });
  return recipe.steps.some((s) => stored(s) && (heats(s) || heatedBefore(s, [s.id])));
}
