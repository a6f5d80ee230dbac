import type { Brewing, Pot } from '../event';
import { divide, figure, minus, most, plus, times, worked, type Figure, type Term } from '../figure';
import { settledTerm, type Settled } from '../household';
import { boilOffKgPerHour, heatMinutes, type BurnerState } from '../kitchen';
import type { DishPlan } from '../menu';
import type { BrewPlace } from './brew-place';
import { linesOf, otherLiquids } from './round-lines';
import { waterForServed } from './rules';

/** One potful: what goes in, and how long it takes. Litres, minutes. */
export interface RoundSize {
  readonly litres: number;
  /** Everything liquid in the pot. */
  readonly potLitres: number;
  readonly water: Figure;
  readonly heat: Figure;
  /** Minutes on the burner: to the boil, then boiling. */
  readonly burnerMinutes: number;
  /** Start to ready. */
  readonly minutes: number;
  readonly boilMinutes: number;
  /** Minutes of hands at the start and at the end; together never more than `minutes`. */
  readonly startHands: number;
  readonly finishHands: number;
}

/** True when the drink is made on a burner. */
export const isBrewed = (b: Brewing): boolean => b.method !== 'cold' && b.method !== 'water';

const recipeTerm = (dish: DishPlan, key: string, word: string, value: number, unit: string): Term => ({ key, label: { word }, value, unit, origin: { kind: 'recipe', recipe: dish.recipe.id } });

/** Litres of a round's liquids other than water, by litres served; remembered, as every pot and burner asks again. */
export function liquidsBeside(dish: DishPlan, brewing: Brewing): (litres: number) => number {
  const known = new Map<number, number>();
  return (litres) => {
    const found = known.get(litres) ?? otherLiquids(linesOf(dish, brewing, litres));
    known.set(litres, found);
    return found;
  };
}

/** A round of so many litres served with `others` litres of other liquids, made on a burner (null for what needs none) in a pot. */
export function roundSize(place: BrewPlace, dish: DishPlan, brewing: Brewing, litres: number, others: number, pot: Pot, burner: BurnerState | null): RoundSize {
  const evaporated = evaporatedFigure(place.values.latent, dish, brewing, burner);
  const water = waterFigure(dish, brewing, litres, others, evaporated);
  const potLitres = water.value + others;
  const heat = heatFigure(place, water, others, dish, brewing, pot, burner);
  const boilMinutes = Math.ceil(heat.value - 1e-9);
  const pour = place.values.pourMinutes;
  const boiling = isBrewed(brewing) ? Math.ceil(brewing.boilMinutes) : 0;
  const cooling = isBrewed(brewing) && !brewing.hot ? place.values.coolMinutes : 0;
  const minutes = boilMinutes + boiling + Math.ceil(brewing.steepMinutes) + pour + cooling;
  return { litres, potLitres, water, heat, boilMinutes, burnerMinutes: boilMinutes + boiling, minutes, ...handsOf(place, minutes, burner) };
}

/** Hands of a round: all of a short one that needs no burner, else a little at the start and the straining and pouring at the end. */
function handsOf({ values }: BrewPlace, minutes: number, burner: BurnerState | null): Pick<RoundSize, 'startHands' | 'finishHands'> {
  if (burner === null && minutes <= values.shortRound) return { startHands: minutes, finishHands: 0 };
  const finishHands = Math.min(values.pourMinutes, minutes);
  return { startHands: Math.min(values.startMinutes, minutes - finishHands), finishHands };
}

function evaporatedFigure(latent: Settled, dish: DishPlan, brewing: Brewing, burner: BurnerState | null): Figure {
  const boil = recipeTerm(dish, 'boil', 'drinks.term.boilMinutes', burner === null ? 0 : brewing.boilMinutes, 'min');
  if (burner === null) return figure(0, 'L', () => ({ rule: 'boil.rate', terms: [boil], sum: times('boil', 0) }));
  return figure((boilOffKgPerHour(burner.usefulW.value / 1000, latent.value) * brewing.boilMinutes) / 60, 'L', () => ({
    rule: 'boil.rate', terms: [worked('power', { word: 'drinks.term.useful' }, burner.usefulW), settledTerm('latent', latent), boil], sum: divide(times(divide(times(3600, divide('power', 1000)), 'latent'), 'boil'), 60),
  }));
}

/** Water to put in. Leaf is dosed on all liquid; liquids of the recipe other than water come off. */
function waterFigure(dish: DishPlan, b: Brewing, litres: number, others: number, evaporated: Figure): Figure {
  const value = Math.max(0, waterForServed(litres / (1 - b.strainLoss), b.doseGPerL, b.absorbMlPerG, evaporated.value) - others);
  return figure(value, 'L', () => ({
    rule: 'tea.waterForServed',
    terms: [{ key: 'litres', label: { word: 'drinks.term.ready' }, value: litres, unit: 'L', origin: { kind: 'definition' } }, recipeTerm(dish, 'strain', 'drinks.term.strain', b.strainLoss, ''), worked('boiled', { word: 'drinks.term.boiledOff' }, evaporated),
      recipeTerm(dish, 'dose', 'drinks.term.dose', b.doseGPerL, 'g/L'), recipeTerm(dish, 'kept', 'drinks.term.kept', b.absorbMlPerG, 'ml/g'), recipeTerm(dish, 'others', 'drinks.term.otherLiquids', others, 'L')],
    sum: most(0, minus(divide(plus(divide('litres', minus(1, 'strain')), 'boiled'), minus(1, divide(times('dose', 'kept'), 1000))), 'others')),
  }));
}

function heatFigure({ event, values }: BrewPlace, water: Figure, others: number, dish: DishPlan, brewing: Brewing, pot: Pot, burner: BurnerState | null): Figure {
  if (burner === null || !isBrewed(brewing)) return figure(0, 'min', () => ({ rule: 'drinks.noHeat', terms: [worked('water', { word: 'drinks.term.water' }, water)], sum: times('water', 0) }));
  const { water: c, milk: cMilk, metal, boil } = values;
  const second = brewing.milkShare > 0 ? cMilk : c;
  const rise = boil.value - event.kitchen.waterC;
  const value = heatMinutes(1, water.value * c.value + others * second.value, pot.massKg * metal.value, rise, burner.usefulW.value / 1000);
  return figure(value, 'min', () => ({
    rule: 'water.heatTime',
    terms: [worked('water', { word: 'drinks.term.water' }, water), settledTerm('c', c), recipeTerm(dish, 'others', 'drinks.term.otherLiquids', others, 'L'), settledTerm('c2', second),
      { key: 'pot', label: { word: 'drinks.term.potKg' }, value: pot.massKg, unit: 'kg', origin: { kind: 'entered', path: `kitchen.pots.${pot.id}.massKg` } }, settledTerm('metal', metal), worked('boil', { word: 'kitchen.term.boilingPoint' }, boil),
      { key: 'tap', label: { word: 'drinks.term.tap' }, value: event.kitchen.waterC, unit: 'degC', origin: { kind: 'entered', path: 'kitchen.waterC' } }, worked('power', { word: 'drinks.term.useful' }, burner.usefulW)],
    sum: divide(divide(times(plus(times('water', 'c'), times('others', 'c2'), times('pot', 'metal')), minus('boil', 'tap')), divide('power', 1000)), 60),
  }));
}
