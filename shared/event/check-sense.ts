import { pathText, type EventProblem, type FieldPath } from './problem';
import type { Event } from './schema/event';
import type { Recipe } from './schema/recipe';
import { whereOf } from './where';

/** Words for what is out of order; see the subject `event` of the catalogue. */
type Hint = 'endsBeforeBegins' | 'rangeOrder' | 'zeroAmount' | 'panRim' | 'panSides' | 'circle';

/** True when steps wait for each other in a circle. */
export function hasCircle(steps: Recipe['steps']): boolean {
  const waiting = new Map(steps.map((s) => [s.id, s.after]));
  // Taking out every step that waits for nothing left: what cannot be taken out stands in a circle.
  for (;;) {
    const free = [...waiting].filter(([, after]) => !after.some((id) => waiting.has(id)));
    if (free.length === 0) return waiting.size > 0;
    for (const [id] of free) waiting.delete(id);
  }
}

const isZero = (decimal: string): boolean => Number(decimal) === 0;

/** What each field alone allows but not together: ends before starts, amounts of nothing that something is divided by, pans without a size. */
export function checkSense(event: Event): EventProblem[] {
  const problems: EventProblem[] = [];
  const check = (wrong: boolean, path: FieldPath, hint: Hint): void => {
    if (wrong) problems.push({ path: pathText(path), message: { id: 'event.wrongOrder', params: { where: whereOf(event, path), hint } } });
  };
  event.guests.waves.forEach(({ turnout }, at) => {
    check(turnout.kind === 'range' && !(turnout.low <= turnout.likely && turnout.likely <= turnout.high), ['guests', 'waves', at, 'turnout'], 'rangeOrder');
  });
  event.menu.dishes.forEach(({ served }, at) => {
    check(served.kind === 'between' && served.to < served.from, ['menu', 'dishes', at, 'served', 'to'], 'endsBeforeBegins');
  });
  event.recipes.forEach((recipe, at) => {
    check(isZero(recipe.yield.amount.amount), ['recipes', at, 'yield', 'amount'], 'zeroAmount');
    check(hasCircle(recipe.steps), ['recipes', at, 'steps'], 'circle');
  });
  event.kitchen.pans.forEach((pan, at) => {
    check(pan.shape !== 'rectangular' && pan.rimMm === undefined, ['kitchen', 'pans', at], 'panRim');
    check(pan.shape === 'rectangular' && (pan.lengthMm === undefined || pan.widthMm === undefined), ['kitchen', 'pans', at], 'panSides');
  });
  event.people.forEach((person, at) => check(person.to < person.from, ['people', at, 'to'], 'endsBeforeBegins'));
  event.prices.forEach((price, at) => check(isZero(price.per.amount), ['prices', at, 'per'], 'zeroAmount'));
  return problems;
}
