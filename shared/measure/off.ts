import { Big } from 'big.js';
import type { Amount } from './amount';
import type { KitchenPart } from './kitchen';
import { parseAmount } from './parse';
import { baseFactor } from './units';

/** What these parts make together less what was asked, as a share of what was asked; 0 for nothing. Parts and amount share a dimension. */
export function offOf(parts: readonly KitchenPart[], asked: Amount): number {
  const base = asked.amount.times(baseFactor(asked.unit));
  if (base.lte(0)) return 0;
  return parts.reduce((sum, p) => sum.plus((parseAmount(p.text) ?? new Big(0)).times(baseFactor(p.unit))), new Big(0)).div(base).minus(1).toNumber();
}
