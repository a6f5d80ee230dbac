import { Big } from 'big.js';
import { convert, plain, type Amount } from './amount';
import { jugParts, kitchenAmount, type KitchenPart } from './kitchen';
import { offOf } from './off';
import { handMeasureIds, type HandMeasureId, type OnHand } from './on-hand';
import { spoonAndCup, type Measured } from './spoon-and-cup';

/** Below this many millilitres a spoon is surer than a jug (common practice, no source). */
const spoonsBelowMl = 50;
/** A reading of the jug this near is taken; else the last of it is spooned (our choice). */
const jugNear = 0.05;
/** From so many cups on a US kitchen goes by quarts and gallons (our choice). */
const manyCups = 16;
/** Marks of a US measuring jug. */
const jugCups: readonly HandMeasureId[] = ['cup', 'halfCup', 'quarterCup'];

const told = (parts: readonly KitchenPart[], asked: Amount): Measured => ({ parts, off: offOf(parts, asked) });
const nearest = (ways: readonly Measured[]): Measured | null => ways.reduce<Measured | null>((best, way) => (best === null || Math.abs(way.off) < Math.abs(best.off) ? way : best), null);

/** Filled to the last mark below, and the rest by the spoon. */
function jugAndSpoons(a: Amount, ml: Big, { measures, jugStepMl }: OnHand): Measured[] {
  const filled = jugStepMl === null ? new Big(0) : ml.div(jugStepMl).round(0, Big.roundDown).times(jugStepMl);
  const rest = spoonAndCup({ amount: ml.minus(filled), unit: 'ml' }, measures, 'metricCup');
  if (jugStepMl === null || filled.lte(0) || rest === null || ml.eq(filled)) return [];
  const mark: KitchenPart = filled.lt(1000) ? { text: plain(filled), unit: 'ml' } : { text: plain(filled.div(1000)), unit: 'L' };
  return [told([mark, ...rest.parts], a)];
}

function metricVolume(a: Amount, onHand: OnHand): Measured | null {
  const { measures, jugStepMl } = onHand;
  const ml = convert(a, 'ml').amount;
  const spooned = spoonAndCup(a, measures, 'metricCup');
  if (jugStepMl === null) return spooned;
  const jug = told(jugParts(a, jugStepMl), a);
  if (ml.lt(spoonsBelowMl)) return spooned !== null && Math.abs(spooned.off) <= Math.abs(jug.off) + 0.02 ? spooned : jug;
  if (Math.abs(jug.off) <= jugNear) return jug;
  return nearest([jug, ...(spooned === null ? [] : [spooned]), ...jugAndSpoons(a, ml, onHand)]);
}

function usVolume(a: Amount, { measures, jugStepMl }: OnHand): Measured | null {
  const full = measures.length === handMeasureIds.length;
  const many = convert(a, 'cup').amount.gte(manyCups);
  if (jugStepMl !== null && (full || many)) return told(kitchenAmount(a, 'us'), a);
  const there = jugStepMl === null ? measures : handMeasureIds.filter((id) => measures.includes(id) || jugCups.includes(id));
  return spoonAndCup(a, there, 'cup');
}

/**
 * A volume in what there is to measure with. Metric: by spoon below 50 ml, by whole marks of the jug above it, the last of it by spoon where the jug alone
 * would be more than 5 % off. US: spoons and cups, quarts and gallons in quantity. Off by at most 7 % from 30 ml on with the full set; how far, is told.
 * An amount too small for the smallest measure gets one of it. Null when there is nothing to measure with.
 */
export function measureVolume(a: Amount, system: 'metric' | 'us', onHand: OnHand): Measured | null {
  if (a.amount.lte(0)) return { parts: [{ text: '0', unit: system === 'metric' ? 'ml' : 'cup' }], off: 0 };
  return system === 'metric' ? metricVolume(a, onHand) : usVolume(a, onHand);
}
