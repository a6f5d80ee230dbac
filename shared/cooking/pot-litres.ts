import type { Event } from '../event';
import { divide, figure, most, plus, times, workingOf, worked, type Figure, type Term } from '../figure';
import { settle, settledTerm } from '../household';
import { baseFactor, convertFood, dimensionOf } from '../measure';
import type { DishPlan } from '../menu';
import { ingredient } from '../reference';

/** Weight of a dish: its total; for pieces the sum of its ingredients. A litre counts as a kilogram. Unit: kg. */
function kilograms(dish: DishPlan): number {
  const amounts = dimensionOf(dish.total.unit) === 'count' ? dish.lines.map((l) => l.amount) : [dish.total];
  return amounts.reduce((n, a) => n + (dimensionOf(a.unit) === 'count' ? 0 : Number(a.amount.times(baseFactor(a.unit))) / 1000), 0);
}

const gramsOf = (line: DishPlan['lines'][number]): number => Number(convertFood(line.amount, 'g', ingredient(line.ingredient) ?? { gramsPerMl: null, gramsPer: {} })?.amount ?? 0);

/** Dry beans that are soaked, drained and boiled in water no recipe counts. */
const soaks = (dish: DishPlan): boolean => dish.recipe.steps.some((s) => s.does === 'soak') && dish.recipe.steps.some((s) => s.does === 'boil');
const isPulse = (id: string): boolean => ingredient(id)?.section === 'pulses';

/**
 * Litres that stand in pots for a share of a dish, at the fullest moment: all of it cooked; what goes in before it is cooked, a kilogram a litre; or
 * soaked beans with the water that covers them. Unit: L.
 */
export function potLitres(event: Event, dish: DishPlan, portions: number): Figure {
  const isGrain = dish.role === 'grain' || dish.recipe.ingredients.some((l) => l.ingredient.endsWith('rice'));
  const density = settle(event, isGrain ? 'cook.grainDensity' : 'cook.wetDensity');
  const beanRoom = settle(event, 'cook.beanPot');
  const whole = dish.portions.value;
  const part = whole > 0 ? portions / whole : 0;
  const kg = kilograms(dish) * part;
  const inKg = (dish.lines.reduce((n, l) => n + gramsOf(l), 0) / 1000) * part;
  const beansKg = soaks(dish) ? (dish.lines.filter((l) => isPulse(l.ingredient)).reduce((n, l) => n + gramsOf(l), 0) / 1000) * part : 0;
  const value = Math.max(kg / density.value, inKg, beansKg * beanRoom.value);
  return figure(value, 'L', () => {
    const share = (key: string, word: 'cooking.term.cookedKg' | 'cooking.term.rawKg' | 'cooking.term.beansKg', all: number): Term => worked(key, { word }, figure(all * part, 'kg', () => workingOf('cooking.partKg', [
      { key: 'whole', label: { word: 'cooking.term.wholeKg' }, value: all, unit: 'kg', origin: { kind: 'computed', method: 'cooking.method.weights' } },
      { key: 'portions', label: { word: 'cooking.term.portions' }, value: portions, unit: 'portions', origin: { kind: 'computed', method: 'cooking.method.servings' } },
      worked('all', { word: 'cooking.term.allPortions' }, dish.portions),
    ], times('whole', divide('portions', 'all')))));
    const cooked = divide('kg', 'density');
    const raw = times('raw', 'litre');
    const terms: Term[] = [
      share('kg', 'cooking.term.cookedKg', kilograms(dish)), settledTerm('density', density),
      share('raw', 'cooking.term.rawKg', dish.lines.reduce((n, l) => n + gramsOf(l), 0) / 1000),
      { key: 'litre', label: { word: 'cooking.term.litre' }, value: 1, unit: 'L', origin: { kind: 'table', source: 'common-practice', row: 'cook.rawLitre' } },
      share('beans', 'cooking.term.beansKg', soaks(dish) ? dish.lines.filter((l) => isPulse(l.ingredient)).reduce((n, l) => n + gramsOf(l), 0) / 1000 : 0), settledTerm('beanRoom', beanRoom),
    ];
    if (whole <= 0) return workingOf('cooking.potLitres', [{ key: 'none', label: { word: 'cooking.term.portions' }, value: 0, unit: 'L', origin: { kind: 'definition' } }], plus('none'));
    return workingOf('cooking.potLitres', terms, beansKg > 0 ? most(cooked, raw, times('beans', 'beanRoom')) : most(cooked, raw));
  });
}
