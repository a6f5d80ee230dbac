import type { Brewing, Pot } from '../event';
import { computed, divide, figure, minus, most, plus, times, worked, type Figure, type Term } from '../figure';
import { settledTerm, type Settled } from '../household';
import type { BurnerState } from '../kitchen';
import type { DishPlan } from '../menu';
import type { BrewPlace } from './brew-place';
import { isBrewed, type RoundSize } from './round-size';

/** What a round was made for: dish, pot and burner. */
export interface RoundOf {
  readonly dish: DishPlan;
  readonly pot: Pot;
  readonly burner: BurnerState | null;
}

/** Water of a round and its minutes to the boil as figures with their workings. Sizes are tried by the hundred; figures are made for those that stay. */
export function roundFigures(place: BrewPlace, brewing: Brewing, { dish, pot, burner }: RoundOf, size: RoundSize): { readonly water: Figure; readonly heat: Figure } {
  const water = waterFigure(dish, brewing, size, evaporatedFigure(place.values.latent, dish, brewing, size.evaporated, burner));
  return { water, heat: heatFigure(place, water, size, dish, brewing, pot, burner) };
}

const recipeTerm = (dish: DishPlan, key: string, word: string, value: number, unit: string): Term => ({ key, label: { word }, value, unit, origin: { kind: 'recipe', recipe: dish.recipe.id } });

function evaporatedFigure(latent: Settled, dish: DishPlan, brewing: Brewing, value: number, burner: BurnerState | null): Figure {
  const boil = recipeTerm(dish, 'boil', 'drinks.term.boilMinutes', burner === null ? 0 : brewing.boilMinutes, 'min');
  if (burner === null) return figure(value, 'L', () => ({ rule: 'boil.rate', terms: [boil], sum: times('boil', 0) }));
  return figure(value, 'L', () => ({
    rule: 'boil.rate', terms: [worked('power', { word: 'drinks.term.useful' }, burner.usefulW), settledTerm('latent', latent), boil], sum: divide(times(divide(times(3600, divide('power', 1000)), 'latent'), 'boil'), 60),
  }));
}

/** Water to put in. Leaf is dosed on all liquid; liquids of the recipe other than water come off. */
function waterFigure(dish: DishPlan, b: Brewing, { litres, others, water }: RoundSize, evaporated: Figure): Figure {
  return figure(water, 'L', () => ({
    rule: 'tea.waterForServed',
    terms: [computed('litres', { word: 'drinks.term.ready' }, litres, 'L', 'drinks.method.round'), recipeTerm(dish, 'strain', 'drinks.term.strain', b.strainLoss, ''), worked('boiled', { word: 'drinks.term.boiledOff' }, evaporated),
      recipeTerm(dish, 'dose', 'drinks.term.dose', b.doseGPerL, 'g/L'), recipeTerm(dish, 'kept', 'drinks.term.kept', b.absorbMlPerG, 'ml/g'), recipeTerm(dish, 'others', 'drinks.term.otherLiquids', others, 'L')],
    sum: most(0, minus(divide(plus(divide('litres', minus(1, 'strain')), 'boiled'), minus(1, divide(times('dose', 'kept'), 1000))), 'others')),
  }));
}

function heatFigure({ event, values }: BrewPlace, water: Figure, { others, heat }: RoundSize, dish: DishPlan, brewing: Brewing, pot: Pot, burner: BurnerState | null): Figure {
  if (burner === null || !isBrewed(brewing)) return figure(heat, 'min', () => ({ rule: 'drinks.noHeat', terms: [worked('water', { word: 'drinks.term.water' }, water)], sum: times('water', 0) }));
  const { water: c, milk: cMilk, metal, boil } = values;
  const second = brewing.milkShare > 0 ? cMilk : c;
  return figure(heat, 'min', () => ({
    rule: 'water.heatTime',
    terms: [worked('water', { word: 'drinks.term.water' }, water), settledTerm('c', c), recipeTerm(dish, 'others', 'drinks.term.otherLiquids', others, 'L'), settledTerm('c2', second),
      { key: 'pot', label: { word: 'drinks.term.potKg' }, value: pot.massKg, unit: 'kg', origin: { kind: 'entered', path: `kitchen.pots.${pot.id}.massKg` } }, settledTerm('metal', metal), worked('boil', { word: 'kitchen.term.boilingPoint' }, boil),
      { key: 'tap', label: { word: 'drinks.term.tap' }, value: event.kitchen.waterC, unit: 'degC', origin: { kind: 'entered', path: 'kitchen.waterC' } }, worked('power', { word: 'drinks.term.useful' }, burner.usefulW)],
    sum: divide(divide(times(plus(times('water', 'c'), times('others', 'c2'), times('pot', 'metal')), minus('boil', 'tap')), divide('power', 1000)), 60),
  }));
}
