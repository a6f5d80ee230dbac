import type { Event, Frying } from '../event';
import { divide, figure, least, minus, plus, times, worked, type Figure, type Term } from '../figure';
import { settle, settledTerm } from '../household';
import { boilingPoint } from '../kitchen';
import { batterHeat } from './rules';

/** A value of the recipe as a term. */
export type OfRecipe = (key: string, word: string, value: number, unit: string) => Term;

/**
 * How much faster water boils off at the dish's frying heat than at the oil temperature that recipes are given for: the heat into a piece follows
 * the difference between oil and boiling water (heat transfer at the crust; first principles).
 */
export function boilOffFactor(event: Event, frying: Frying): number {
  const boil = boilingPoint(event).value;
  return (frying.targetC - boil) / (settle(event, 'fry.referenceC').value - boil);
}

const target = (frying: Frying, of: OfRecipe): Term => of('target', 'frying.term.targetC', frying.targetC, 'degC');

/** Water a kilogram of batter loses at the dish's frying heat, kg; never more than it holds. Rule `fry.waterLost`. */
export function waterLostAt(event: Event, frying: Frying, of: OfRecipe): Figure {
  const boil = boilingPoint(event);
  return figure(Math.min(frying.waterFraction, frying.waterLostKgPerKg * boilOffFactor(event, frying)), 'kg/kg', () => ({
    rule: 'fry.waterLost',
    terms: [of('lost', 'frying.term.waterLost', frying.waterLostKgPerKg, 'kg/kg'), of('water', 'frying.term.water', frying.waterFraction, ''), target(frying, of), worked('boil', { word: 'kitchen.term.boilingPoint' }, boil), settledTerm('reference', settle(event, 'fry.referenceC'))],
    sum: least('water', times('lost', divide(minus('target', 'boil'), minus('reference', 'boil')))),
  }));
}

/** Water lost as measured at the dish's frying heat, told for the oil temperature that recipes are given for. Rule `fry.waterLostTold`. */
export function waterLostTold(event: Event, frying: Frying, of: OfRecipe, lost: Figure): Figure {
  if (boilOffFactor(event, frying) === 1) return lost;
  return figure(lost.value / boilOffFactor(event, frying), 'kg/kg', () => ({
    rule: 'fry.waterLostTold',
    terms: [worked('lost', { word: 'frying.term.waterLost' }, lost), target(frying, of), worked('boil', { word: 'kitchen.term.boilingPoint' }, boilingPoint(event)), settledTerm('reference', settle(event, 'fry.referenceC'))],
    sum: divide('lost', divide(minus('target', 'boil'), minus('reference', 'boil'))),
  }));
}

/** Heat of the crust for oil hotter (or cooler) than recipes are given for, kJ per kg of batter: part of the solids comes near the oil's temperature. Rule `fry.crustHeat`. */
export function crustHeat(event: Event, frying: Frying, of: OfRecipe): Figure {
  const [cs, crust, reference] = [settle(event, 'fry.cs'), settle(event, 'fry.crustShare'), settle(event, 'fry.referenceC')];
  return figure((1 - frying.waterFraction) * cs.value * crust.value * (frying.targetC - reference.value), 'kJ/kg', () => ({
    rule: 'fry.crustHeat', terms: [of('water', 'frying.term.water', frying.waterFraction, ''), settledTerm('cs', cs), settledTerm('crust', crust), target(frying, of), settledTerm('reference', reference)],
    sum: times(minus(1, 'water'), 'cs', 'crust', minus('target', 'reference')),
  }));
}

/** Heat into a kilogram of batter at the dish's frying heat, kJ: warming, boiling off, and the crust. Rules `fry.energyPerKgBatter`, `fry.heatOfBatter`. */
export function heatOfBatter(event: Event, frying: Frying, of: OfRecipe): Figure {
  const [cw, cs, latent, boil] = [settle(event, 'water.cp'), settle(event, 'fry.cs'), settle(event, 'fry.hfg'), boilingPoint(event)];
  const lost = waterLostAt(event, frying, of);
  const crust = crustHeat(event, frying, of);
  const rise = minus('boil', 'batter');
  const boiled = figure(batterHeat({ water: frying.waterFraction, lost: lost.value, from: frying.batterC, to: boil.value, waterCp: cw.value, solidsCp: cs.value, latent: latent.value }), 'kJ/kg', () => ({
    rule: 'fry.energyPerKgBatter',
    terms: [of('water', 'frying.term.water', frying.waterFraction, ''), worked('lost', { word: 'frying.term.waterLost' }, lost), of('batter', 'frying.term.batterC', frying.batterC, 'degC'),
      worked('boil', { word: 'kitchen.term.boilingPoint' }, boil), settledTerm('cw', cw), settledTerm('cs', cs), settledTerm('latent', latent)],
    sum: plus(times('water', 'cw', rise), times(minus(1, 'water'), 'cs', rise), times('lost', 'latent')),
  }));
  return figure(boiled.value + crust.value, 'kJ/kg', () => ({
    rule: 'fry.heatOfBatter', terms: [worked('boiled', { word: 'frying.term.heat' }, boiled), worked('crust', { word: 'frying.term.crust' }, crust)], sum: plus('boiled', 'crust'),
  }));
}
