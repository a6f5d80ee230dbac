import { shoppingOf, type Event } from '../event';
import { sections } from '../reference';
import { totalCost } from './cost';
import { goods, isThing } from './goods';
import { notCounted } from './larder';
import { draftOf, makeLine, otherSection, type LineDraft } from './line';
import { ownDrafts } from './own-lines';
import { originNames } from './origin-names';
import { purchases, type Purchase } from './purchase';
import type { BuyingPlan, Need, ShoppingLine } from './types';

/** What the table does not know, or cannot turn into the unit the shop sells by: such lines are bought in the recipe's own unit. */
function unknownOf(all: readonly Purchase[]): BuyingPlan['unknown'] {
  const byId = new Map<string, Set<string>>();
  for (const { id, sold, needs } of all) {
    if (sold) continue;
    const dishes = byId.get(id) ?? new Set<string>();
    for (const { need } of needs) dishes.add(need.origin);
    byId.set(id, dishes);
  }
  return [...byId].map(([id, dishes]) => ({ ingredient: id, dishes: [...dishes] }));
}

/** A household's own things are counted, not bought. */
function parted(event: Event, drafts: readonly LineDraft[]): { readonly bought: readonly LineDraft[]; readonly own: BuyingPlan['ownThings'] } {
  const owned = new Set(shoppingOf(event).ownThings);
  const isOwn = (d: LineDraft): boolean => d.kind === 'thing' && owned.has(d.id);
  return {
    bought: drafts.filter((d) => !isOwn(d)),
    own: drafts.filter(isOwn).map(({ id, name, need, unit, needFigure }) => ({ thing: id, name, need: { amount: need, unit }, needFigure })),
  };
}

/**
 * The shopping list: edible needs as purchased, one line per food or thing in one unit, less the larder and what is bought, in packs with the
 * least left over; of what keeps, a little more when that makes fewer packs. Own lines are bought as the cook wrote them.
 * Rounded once, at the packs. Lines are in walking order of the shop, then by name.
 */
export function planBuying(event: Event, needs: readonly Need[]): BuyingPlan {
  const all = purchases(needs.filter((n) => n.amount.amount.gt(0)), event.preferences.units);
  const nameOf = originNames(event);
  const order = [...sections.map((s) => s.id), otherSection];
  const { bought, own } = parted(event, all.map((purchase) => draftOf(event, purchase, nameOf)));
  const place = (line: ShoppingLine): number => (order.indexOf(line.section) + order.length) % order.length;
  const lines = [...bought, ...ownDrafts(event, order)]
    .map((draft) => makeLine(event, draft))
    .toSorted((a, b) => place(a) - place(b) || (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
  const total = totalCost(lines.filter((l) => l.buy.amount.gt(0)));
  const used = new Set(lines.map((l) => l.section));
  return {
    lines, sections: order.filter((s) => used.has(s)),
    cost: total?.cost ?? null, costFigure: total?.figure ?? null,
    unpriced: lines.filter((l) => l.buy.amount.gt(0) && l.cost === undefined).length,
    shoppers: [...new Set(lines.flatMap((l) => (l.shopper === null ? [] : [l.shopper])))],
    ownThings: own, borrowed: shoppingOf(event).borrowed,
    unknown: unknownOf(all.filter((p) => !isThing(p.id))), notCounted: notCounted(event, lines, goods),
  };
}
