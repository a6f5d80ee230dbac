import { Big } from 'big.js';
import { convert, plain, type Amount } from './amount';
import { baseFactor, dimensionOf, type UnitId } from './units';

/** One measurable part of an amount: a number, possibly with a fraction sign, and the spoon, cup or scale unit it is measured with. */
export interface KitchenPart {
  readonly text: string;
  readonly unit: UnitId;
}

/** Rounds to the nearest multiple of `step`; ties go up. */
const toStep = (value: Big, step: string): Big => value.div(step).round(0, Big.roundHalfUp).times(step);

/** Steps of a scale: below `under` of the base unit, amounts go to the nearest `step`. */
interface Row { readonly under: string; readonly step: string }

// Grams and millilitres, common practice (no source): a kitchen scale and jug read no finer. Litres to the tenth, as every figure in litres is shown.
const gramRows: readonly Row[] = [
  { under: '2', step: '0.1' }, { under: '10', step: '0.5' }, { under: '50', step: '1' }, { under: '100', step: '5' },
  { under: '1000', step: '10' }, { under: '5000', step: '50' }, { under: '50000', step: '100' }, { under: '1e12', step: '500' },
];
const mlRows: readonly Row[] = [
  { under: '2', step: '0.25' }, { under: '15', step: '0.5' }, { under: '50', step: '2.5' }, { under: '100', step: '5' }, { under: '250', step: '10' },
  { under: '1000', step: '25' }, { under: '1e12', step: '100' },
];
// Ounces, after the guide for rounding off weights of an early-childhood menu manual (ROUND); finer under 2 oz, where it says to use a measure.
const ounceRows: readonly Row[] = [
  { under: '2', step: '0.125' }, { under: '10', step: '0.25' }, { under: '40', step: '0.5' }, { under: '80', step: '1' },
  { under: '800', step: '4' }, { under: '1e12', step: '16' },
];

const stepped = (value: Big, rows: readonly Row[], least: Big): Big => {
  const step = rows.find((r) => value.lt(r.under))?.step ?? '1';
  // What the scale cannot show is not asked for; nor is anything rounded away.
  if (least.lte(0) || value.lt(least)) return toStep(value, step);
  return toStep(value, plain(new Big(step).div(least).round(0, Big.roundUp).times(least)));
};

/** Steps of scales that show ounces. */
const ounceSteps = ['0.125', '0.25', '0.5', '1', '2', '4'];

// The shipped text face has quarters and halves; it sets thirds and eighths from digits around a fraction slash (U+2044).
const signs: Readonly<Record<string, string>> = {
  '0.125': '1\u20448', '0.25': '¼', '0.333': '1\u20443', '0.375': '3\u20448', '0.5': '½', '0.625': '5\u20448', '0.667': '2\u20443', '0.75': '¾', '0.875': '7\u20448',
};

/** A number with a fraction where a cook knows one ("1½", "2 1⁄3"), else plain decimals. */
export function fractionText(value: Big): string {
  const whole = value.round(0, Big.roundDown);
  const rest = value.minus(whole);
  const sign = signs[plain(rest.round(3))];
  if (rest.eq(0)) return plain(whole);
  if (sign === undefined) return plain(value.round(3));
  if (whole.eq(0)) return sign;
  return `${plain(whole)}${sign.length > 1 ? ' ' : ''}${sign}`;
}

function metricParts(a: Amount, small: 'g' | 'ml', large: 'kg' | 'L', rows: readonly Row[], least: Big): KitchenPart[] {
  const value = stepped(convert(a, small).amount, rows, least);
  return value.lt(1000) ? [{ text: plain(value), unit: small }] : [{ text: plain(value.div(1000)), unit: large }];
}

/** A volume in whole marks of a measuring jug, in our own steps where those are coarser; at least one mark. `stepMl`: from mark to mark, above 0. */
export function jugParts(a: Amount, stepMl: number): KitchenPart[] {
  const step = new Big(stepMl);
  const ml = convert(a, 'ml').amount;
  return metricParts({ amount: ml.lt(step) ? step : ml, unit: 'ml' }, 'ml', 'L', mlRows, step);
}

function ounceParts(a: Amount, scaleStepG: Big): KitchenPart[] {
  const least = ounceSteps.find((step) => baseFactor('oz').times(step).times('1.1').gte(scaleStepG)) ?? '4';
  const ounces = stepped(convert(a, 'oz').amount, ounceRows, new Big(least));
  if (ounces.lt(16)) return [{ text: fractionText(ounces), unit: 'oz' }];
  const pounds = ounces.div(16).round(0, Big.roundDown);
  const rest = ounces.minus(pounds.times(16));
  // From five pounds on everything is in quarters of a pound (ROUND).
  if (ounces.gte(80)) return [{ text: fractionText(ounces.div(16)), unit: 'lb' }];
  return rest.eq(0) ? [{ text: plain(pounds), unit: 'lb' }] : [{ text: plain(pounds), unit: 'lb' }, { text: fractionText(rest), unit: 'oz' }];
}

const third = new Big(1).div(3);

/** Nearest of the dry cup set (quarters and thirds) to the part of a cup. */
function nearestCupFraction(rest: Big): Big {
  const set = [new Big(0), new Big('0.25'), third, new Big('0.5'), third.times(2), new Big('0.75'), new Big(1)];
  return set.reduce((best, next) => (next.minus(rest).abs().lt(best.minus(rest).abs()) ? next : best));
}

function cupParts(a: Amount): KitchenPart[] {
  const tsp = convert(a, 'tsp').amount;
  if (tsp.lt('2.9')) return [{ text: fractionText(toStep(tsp, '0.125')), unit: 'tsp' }];
  if (tsp.lt('11.75')) return spoons(toStep(tsp, tsp.lt(9) ? '0.25' : '0.5'));
  const cups = tsp.div(48);
  if (cups.gte(8)) return bigMeasure(cups);
  const whole = cups.round(0, Big.roundDown);
  const rest = cups.minus(whole);
  if (cups.gte(2)) return [{ text: fractionText(whole.plus(nearestCupFraction(rest))), unit: 'cup' }];
  // Below two cups: full quarter cups and what is left in tablespoons.
  const quarters = cups.times(4).plus('0.0000001').round(0, Big.roundDown);
  const left = toStep(tsp.minus(quarters.times(12)), cups.lt('0.5') ? '1.5' : '3').div(3);
  const exactThird = [third, third.times(2)].find((t) => t.minus(rest).abs().lt('0.005'));
  if (exactThird !== undefined) return [{ text: fractionText(whole.plus(exactThird)), unit: 'cup' }];
  if (left.eq(0)) return [{ text: fractionText(quarters.div(4)), unit: 'cup' }];
  if (left.gte(4)) return [{ text: fractionText(quarters.plus(1).div(4)), unit: 'cup' }];
  return [{ text: fractionText(quarters.div(4)), unit: 'cup' }, { text: fractionText(left), unit: 'tbsp' }];
}

function spoons(tsp: Big): KitchenPart[] {
  const whole = tsp.div(3).round(0, Big.roundDown);
  const left = tsp.minus(whole.times(3));
  const tbsp = (count: Big): KitchenPart => ({ text: fractionText(count), unit: 'tbsp' });
  if (left.eq(0)) return [tbsp(whole)];
  // Half a tablespoon is a spoon of the set.
  if (left.eq('1.5')) return [tbsp(whole.plus('0.5'))];
  return [tbsp(whole), { text: fractionText(left), unit: 'tsp' }];
}

/** From two quarts on: eighths of a quart; from four quarts gallons and quarter quarts, from eight whole quarts, from ten gallons half gallons. */
function bigMeasure(cups: Big): KitchenPart[] {
  const quarts = cups.div(4);
  if (quarts.lt(4)) return [{ text: fractionText(toStep(quarts, '0.125')), unit: 'quart' }];
  const gallons = toStep(quarts.div(4), quarts.lt(8) ? '0.0625' : quarts.lt(40) ? '0.25' : '0.5');
  const whole = gallons.round(0, Big.roundDown);
  const rest = gallons.minus(whole).times(4);
  if (rest.eq(0)) return [{ text: plain(whole), unit: 'gallon' }];
  return [{ text: plain(whole), unit: 'gallon' }, { text: fractionText(rest), unit: 'quart' }];
}

/**
 * An amount as a cook measures it: spoons and cups with fractions, grams and kilograms, ounces and pounds; large amounts in large units.
 * Within a dimension only; counted things keep their unit, in quarters up to 10 and whole above.
 * Off by at most 13 % from 1 g, 1 ml, ½ tsp and ½ oz on, and by at most 7 % from 30 g, 30 ml, 2 tbsp and 2 oz on.
 * Steps of US measures follow a printed guide for rounding off weights and measures (ROUND); metric ones are common practice.
 * An amount above zero never becomes zero: the smallest step is named instead.
 * @param scaleStepG smallest step of the scale in grams: weights go to whole steps of it from one step on. 0 when the scale is finer than any step here.
 */
export function kitchenAmount(a: Amount, system: 'metric' | 'us', scaleStepG = 0): KitchenPart[] {
  const least = new Big(scaleStepG);
  const dimension = dimensionOf(a.unit);
  if (dimension === 'count') {
    const value = toStep(a.amount, a.amount.lt(10) ? '0.25' : '1');
    return [{ text: a.amount.gt(0) && value.eq(0) ? '¼' : fractionText(value), unit: a.unit }];
  }
  const parts = system === 'metric'
    ? (dimension === 'mass' ? metricParts(a, 'g', 'kg', gramRows, least) : metricParts(a, 'ml', 'L', mlRows, new Big(0)))
    : (dimension === 'mass' ? ounceParts(a, least) : cupParts(a));
  const [first] = parts;
  if (parts.length > 1 || first?.text !== '0' || a.amount.lte(0)) return parts;
  const smallest: Readonly<Partial<Record<UnitId, string>>> = { g: '0.1', ml: '0.25' };
  return [{ text: smallest[first.unit] ?? '1\u20448', unit: first.unit }];
}
