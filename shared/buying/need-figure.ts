import { Big } from 'big.js';
import { divide, figure, plus, times, worked, type Figure, type Origin, type Term } from '../figure';
import { convertFood, type UnitId } from '../measure';
import type { Ingredient } from '../reference';
import { ediblePercent, type Purchase, type PurchaseNeed } from './purchase';

const noWeights = { gramsPerMl: null, gramsPer: {} };

function tableOrigin(row: Ingredient | undefined, of: 'density' | 'ep' | 'piece' | 'bunch' | 'clove' | 'slice' | 'pinch'): Origin {
  const source = row?.figures[of]?.source;
  return source === undefined ? { kind: 'definition' } : { kind: 'table', source, row: `${row?.id ?? ''}.${of}` };
}

/** Where the step from the recipe's unit to the shop's comes from: a definition, a density or a piece weight. */
function conversionOrigin(row: Ingredient | undefined, from: UnitId, to: UnitId): Origin {
  for (const unit of [from, to]) {
    if (unit === 'piece' || unit === 'bunch' || unit === 'clove' || unit === 'slice' || unit === 'pinch') {
      if (from !== to) return tableOrigin(row, unit);
    }
  }
  return convertFood({ amount: new Big(1), unit: from }, to, noWeights) === null ? tableOrigin(row, 'density') : { kind: 'definition' };
}

function originFigure(purchase: Purchase, { need, bought }: PurchaseNeed): Figure {
  // A thing worked out in the unit it is bought in needs no step between.
  if (need.figure !== undefined && need.amount.unit === purchase.unit && ediblePercent(purchase.row) === 100) return need.figure;
  const percent = ediblePercent(purchase.row);
  const one = convertFood({ amount: new Big(1), unit: need.amount.unit }, purchase.unit, purchase.row ?? noWeights);
  return figure(bought.amount.toNumber(), purchase.unit, () => ({
    rule: 'buying.asPurchased',
    terms: [
      need.figure === undefined
        ? { key: 'edible', label: { word: 'buying.term.edible' }, value: need.amount.amount.toNumber(), unit: need.amount.unit, origin: { kind: 'recipe', recipe: need.origin } }
        : worked('edible', { word: 'buying.term.wanted' }, need.figure),
      {
        key: 'perUnit', label: { word: 'buying.term.perUnit', params: { from: need.amount.unit, to: purchase.unit } },
        value: one?.amount.toNumber() ?? 1, unit: purchase.unit, origin: conversionOrigin(purchase.row, need.amount.unit, purchase.unit),
      },
      { key: 'percent', label: { word: 'buying.term.ediblePercent' }, value: percent, unit: 'percent', origin: tableOrigin(purchase.row, 'ep') },
    ],
    sum: divide(times('edible', 'perUnit', 100), 'percent'),
  }));
}

/** All that has to be in the house of one food, as purchased: the dishes added up. Unit: the purchase's. */
export function needFigure(purchase: Purchase, need: Big, nameOf: (origin: string) => Term['label']): Figure {
  const [only, ...more] = purchase.needs;
  // What one room has worked out whole needs no step between.
  if (only?.need.figure !== undefined && more.length === 0 && only.need.amount.unit === purchase.unit && ediblePercent(purchase.row) === 100) return only.need.figure;
  return figure(need.toNumber(), purchase.unit, () => {
    const terms = purchase.needs.map((n, i) => worked(`o${i}`, nameOf(n.need.origin), originFigure(purchase, n)));
    return { rule: 'buying.need', terms, sum: plus(...terms.map((t) => t.key)) };
  });
}
