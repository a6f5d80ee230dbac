import { Big } from 'big.js';
import { convert, plain, type Amount } from './amount';
import { fractionText, type KitchenPart } from './kitchen';
import { baseFactor, dimensionOf, type UnitId } from './units';

/** Units from large to small, and the step of the smallest. */
interface Ladder { readonly units: readonly UnitId[]; readonly step: string }

// Ounces and teaspoons to the quarter: the armed forces' guide to rounding (AFRS-A1) and the navy's volume cascade (NAV14163).
const ladders: Readonly<Record<'mass' | 'volume', Ladder>> = {
  mass: { units: ['lb', 'oz'], step: '0.25' },
  volume: { units: ['gallon', 'quart', 'pint', 'cup', 'tbsp', 'tsp'], step: '0.25' },
};

/**
 * An amount in US units down to the last quarter ounce or quarter teaspoon, each unit as full as it goes: "4 lb 5½ oz",
 * "19 gallon 3 quart 1 pint 1 cup 10 tbsp 2¾ tsp". Off by at most an eighth of the smallest unit, unlike `kitchenAmount`, which gives a large
 * amount in few measures. Counted things come back as they are. Rounding: AFRS-A1 (ounces), NAV14163 (volume).
 */
export function fullMeasure(a: Amount): KitchenPart[] {
  const dimension = dimensionOf(a.unit);
  if (dimension === 'count') return [{ text: fractionText(a.amount), unit: a.unit }];
  const { units, step } = ladders[dimension];
  const smallest: UnitId = dimension === 'mass' ? 'oz' : 'tsp';
  let left = convert(a, smallest).amount.div(step).round(0, Big.roundHalfUp).times(step);
  const parts: KitchenPart[] = [];
  for (const unit of units) {
    const size = baseFactor(unit).div(baseFactor(smallest)).round(6);
    const count = unit === smallest ? left : left.div(size).round(0, Big.roundDown);
    left = left.minus(count.times(size));
    if (count.gt(0)) parts.push({ text: unit === smallest ? fractionText(count) : plain(count), unit });
  }
  return parts.length > 0 ? parts : [{ text: '0', unit: smallest }];
}
