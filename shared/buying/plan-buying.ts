import { Big } from 'big.js';
import type { Event } from '../event';
import type { Term } from '../figure';
import { settle } from '../household';
import { addMoney, moneyText, type Amount } from '../measure';
import { ingredient, sections } from '../reference';
import { costOf, inLarder, notCounted } from './cost';
import { looseAmount } from './loose';
import { needFigure } from './need-figure';
import { choosePacks } from './packs';
import { shelfOf } from './shelf';
import { purchases, type Purchase } from './purchase';
import type { BuyingPlan, Need, ShoppingLine } from './types';

const otherSection = 'other';

/** What keeps for months may be bought a little in excess to carry home fewer packs. */
function extraFor(event: Event, { row }: Purchase, missing: Big): Big {
  return row !== undefined && row.keepsDays === null && missing.gt(0) ? missing.times(settle(event, 'buy.extraForFewerPacks').value) : new Big(0);
}

function packsFor(event: Event, purchase: Purchase, missing: Big): { readonly count: number; readonly size: Amount }[] {
  const { unit } = purchase;
  const shelf = purchase.sold && purchase.row !== undefined ? shelfOf(purchase.row, event.preferences.units, unit) : null;
  if (shelf !== null) return choosePacks(shelf, missing, extraFor(event, purchase, missing)).map(({ count, size }) => ({ count, size: { amount: size, unit } }));
  const size = looseAmount({ amount: missing, unit });
  return size.amount.gt(0) ? [{ count: 1, size }] : [];
}

/** The dishes of a line with their shares, one entry per dish. */
function originsOf({ needs, unit }: Purchase): { readonly dish: string; readonly amount: Amount }[] {
  const byDish = new Map<string, Big>();
  for (const { need, bought } of needs) byDish.set(need.origin, (byDish.get(need.origin) ?? new Big(0)).plus(bought.amount));
  return [...byDish].map(([dish, amount]) => ({ dish, amount: { amount, unit } }));
}

function lineOf(event: Event, purchase: Purchase, nameOf: (origin: string) => Term['label']): ShoppingLine {
  const { id, row, unit } = purchase;
  const origins = originsOf(purchase);
  const need = origins.reduce((sum, o) => sum.plus(o.amount.amount), new Big(0));
  const larder = inLarder(event, id, row, unit);
  const packs = packsFor(event, purchase, need.minus(larder.amount));
  const buy: Amount = { amount: packs.reduce((sum, p) => sum.plus(p.size.amount.times(p.count)), new Big(0)), unit };
  const cost = costOf(event, id, row, buy);
  return {
    ingredient: id,
    name: row?.name ?? purchase.needs.find((n) => n.need.name !== undefined)?.need.name ?? id,
    section: row?.section ?? otherSection,
    need: { amount: need, unit },
    needFigure: needFigure(purchase, need, nameOf),
    origins,
    larder,
    buy,
    packs,
    ...(cost === null ? {} : { cost: moneyText(cost) }),
    keepsDays: row?.keepsDays ?? null,
    optional: false,
  };
}

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

/**
 * The shopping list: edible needs as purchased, one line per food in one unit, less the larder, in packs with the least left over;
 * of what keeps, a little more when that makes fewer packs.
 * Rounded once, at the packs. Lines are in walking order of the shop, then by name.
 */
export function planBuying(event: Event, needs: readonly Need[]): BuyingPlan {
  const all = purchases(needs.filter((n) => n.amount.amount.gt(0)), event.preferences.units);
  const recipeNames = new Map(event.recipes.map((r) => [r.id, r.name]));
  const dishNames = new Map(event.menu.dishes.map((d) => [d.id, d.name ?? recipeNames.get(d.recipe) ?? d.id]));
  const nameOf = (origin: string): Term['label'] => (origin === 'frying-oil' ? { word: 'buying.term.fryingOil' } : { text: dishNames.get(origin) ?? origin });
  const order = [...sections.map((s) => s.id), otherSection];
  const place = (line: ShoppingLine): number => (order.indexOf(line.section) + order.length) % order.length;
  const lines = all
    .map((purchase) => lineOf(event, purchase, nameOf))
    .toSorted((a, b) => place(a) - place(b) || (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
  const priced = lines.filter((l) => l.cost !== undefined);
  const cost = priced.length === 0 ? null : addMoney(...priced.map((l) => l.cost ?? '0'));
  const used = new Set(lines.map((l) => l.section));
  return { lines, sections: order.filter((s) => used.has(s)), cost, unknown: unknownOf(all), notCounted: notCounted(event, lines, ingredient) };
}
