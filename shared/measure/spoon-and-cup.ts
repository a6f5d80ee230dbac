import { Big } from 'big.js';
import { convert, type Amount } from './amount';
import { fractionText, type KitchenPart } from './kitchen';
import { handMeasures, type HandMeasureId } from './on-hand';
import { baseFactor, type UnitId } from './units';

/** An amount as it is measured, and by how much that is off. */
export interface Measured {
  readonly parts: readonly KitchenPart[];
  /** What is measured less what was asked, as a share of what was asked; 0 for nothing. */
  readonly off: number;
}

// Choosing the scoops needs no exact arithmetic: their count is whole, and what is measured is told exactly from it.
interface Scoop { readonly unit: UnitId; readonly part: Big; readonly ml: number }
interface Try { readonly counts: readonly (readonly [Scoop, number])[]; readonly scoops: number; readonly error: number }

/** This near, fewer scoops are better than a nearer amount (our choice): well under what two level cups of one flour differ by. */
const nearEnough = 0.02;

/** Fills each measure in turn, large to small; the last one to the nearest. */
function fill(asked: number, scoops: readonly Scoop[]): Try {
  let left = asked;
  const counts = scoops.map((scoop, i) => {
    const count = i === scoops.length - 1 ? Math.floor(left / scoop.ml + 0.5) : Math.floor(left / scoop.ml + 1e-9);
    left -= count * scoop.ml;
    return [scoop, count] as const;
  });
  return { counts: counts.filter(([, n]) => n > 0), scoops: counts.reduce((sum, [, n]) => sum + n, 0), error: -left };
}

/** Every way worth trying: whole cups and one size of part cup, then spoons down to each size in turn. */
function tries(asked: number, scoops: readonly Scoop[]): Try[] {
  const [cups, spoons] = [scoops.filter((s) => s.unit === 'cup' || s.unit === 'metricCup'), scoops.filter((s) => s.unit === 'tbsp' || s.unit === 'tsp')];
  const whole = cups.filter((s) => s.part.eq(1));
  const heads: (readonly Scoop[])[] = [[], whole, ...cups.filter((s) => !s.part.eq(1)).flatMap((s) => [[...whole, s], [s]])];
  return heads.flatMap((head) => [head, ...spoons.map((_, n) => [...head, ...spoons.slice(0, n + 1)])]).filter((set) => set.length > 0).map((set) => fill(asked, set)).filter((t) => t.counts.length > 0);
}

/**
 * A volume with the spoons and dry cups that are there: of all ways within 2 % the one with fewest scoops, else the nearest. Off by at most 2 % or half
 * the smallest measure, whichever is more; an amount too small for the smallest measure gets one of it. Null without any measure.
 * @param cup the household's cup: the US cup of 236.6 ml or the metric one of 250 ml.
 */
export function spoonAndCup(a: Amount, measures: readonly HandMeasureId[], cup: 'cup' | 'metricCup'): Measured | null {
  const asked = convert(a, 'ml').amount.toNumber();
  const scoops = measures.map((id): Scoop => {
    const { unit, part } = handMeasures[id];
    const real = unit === 'cup' ? cup : unit;
    return { unit: real, part, ml: baseFactor(real).times(part).toNumber() };
  }).toSorted((x, y) => y.ml - x.ml);
  const [smallest] = scoops.toReversed();
  if (smallest === undefined) return null;
  if (asked <= 0) return { parts: [{ text: '0', unit: smallest.unit }], off: 0 };
  const all = tries(asked, scoops);
  const share = (t: Try): number => Math.abs(t.error) / asked;
  const near = all.filter((t) => share(t) <= nearEnough);
  const best = near.length > 0 ? near.reduce((x, y) => (y.scoops < x.scoops || (y.scoops === x.scoops && share(y) < share(x)) ? y : x)) : all.reduce<Try | null>((x, y) => (x === null || share(y) < share(x) ? y : x), null);
  const chosen = best ?? { counts: [[smallest, 1] as const], scoops: 1, error: smallest.ml - asked };
  return { parts: parts(chosen), off: chosen.error / asked };
}

/** Scoops of one unit read as one number: three quarter cups are "¾ cup". */
function parts(chosen: Try): KitchenPart[] {
  const units = [...new Set(chosen.counts.map(([scoop]) => scoop.unit))];
  return units.map((unit) => ({ text: fractionText(chosen.counts.filter(([s]) => s.unit === unit).reduce((sum, [s, n]) => sum.plus(s.part.times(n)), new Big(0))), unit }));
}
