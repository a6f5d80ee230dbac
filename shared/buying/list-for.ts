import type { BuyingPlan, ShoppingLine } from './types';

/** The list as somebody walks the shop with it. */
export interface WalkingList {
  /** What is to be bought now, by section in walking order; sections without lines are left out. */
  readonly sections: readonly { readonly section: string; readonly lines: readonly ShoppingLine[] }[];
  /** Left for a later trip, in the same order. */
  readonly later: readonly ShoppingLine[];
}

/**
 * What is still to buy. What is bought, or in the house, is left out.
 * @param who name of a shopper: only the lines of theirs; `null`: the lines nobody is named for; left out: all lines.
 */
export function listFor({ lines, sections }: BuyingPlan, who?: string | null): WalkingList {
  const wanted = lines.filter((l) => l.buy.amount.gt(0) && (who === undefined || l.shopper === who));
  const known = [...sections, ...new Set(wanted.map((l) => l.section).filter((s) => !sections.includes(s)))];
  const now = wanted.filter((l) => l.state !== 'later');
  return {
    sections: known.map((section) => ({ section, lines: now.filter((l) => l.section === section) })).filter((s) => s.lines.length > 0),
    later: wanted.filter((l) => l.state === 'later'),
  };
}
