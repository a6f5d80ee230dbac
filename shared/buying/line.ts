import { Big } from 'big.js';
import { foodCalled, type Event } from '../event';
import type { Figure, Term } from '../figure';
import { settle } from '../household';
import type { Amount, UnitId } from '../measure';
import type { Ingredient } from '../reference';
import { buyFigure, coveredFigure, missingFigure } from './buy-figure';
import { costFigure, costOf, priceOf } from './cost';
import { isThing } from './goods';
import { inLarder, larderPath } from './larder';
import { looseAmount } from './loose';
import { boughtPath, noteOf, notedAt, stateOf } from './marks';
import { needFigure } from './need-figure';
import { choosePacks, type Sizes } from './packs';
import type { Purchase } from './purchase';
import { reserveFigure } from './reserve-figure';
import { shelfOf } from './shelf';
import { shopperOf } from './shopper';
import type { ShoppingLine } from './types';

/** Section of what no other section of the shop has. */
export const otherSection = 'other';

/** What a line is made from, before the larder, the marks and the packs. */
export interface LineDraft {
  readonly key: string;
  readonly kind: ShoppingLine['kind'];
  readonly id: string;
  readonly row: Ingredient | undefined;
  readonly name: string;
  readonly section: string;
  readonly unit: UnitId;
  readonly need: Big;
  readonly needFigure: Figure;
  readonly origins: ShoppingLine['origins'];
  /** Pack sizes; null when it is bought loose. */
  readonly shelf: Sizes | null;
  /** True when exactly what is missing is bought: an own line, or a food that the table cannot tell how it is sold. */
  readonly exact: boolean;
  readonly when: string | null;
  readonly reserve: Figure | null;
}

/** What keeps for months may be bought a little in excess to carry home fewer packs. */
function extraFor(event: Event, { row }: LineDraft, missing: Big): Big {
  return row !== undefined && row.keepsDays === null && missing.gt(0) ? missing.times(settle(event, 'buy.extraForFewerPacks').value) : new Big(0);
}

function packsFor(event: Event, draft: LineDraft, missing: Big): ShoppingLine['packs'] {
  const { unit, shelf } = draft;
  if (shelf !== null) return choosePacks(shelf, missing, extraFor(event, draft, missing)).map(({ count, size }) => ({ count, size: { amount: size, unit } }));
  const amount = { amount: missing.gt(0) ? missing : new Big(0), unit };
  const size = draft.exact ? amount : looseAmount(amount);
  return size.amount.gt(0) ? [{ count: 1, size }] : [];
}

const together = (packs: ShoppingLine['packs']): Big => packs.reduce((sum, p) => sum.plus(p.size.amount.times(p.count)), new Big(0));

/**
 * One pack as a cook meets it in the shop: the largest bought, else the smallest there is, else one of the unit; of a food no shop size is known for, all
 * of it. @param packs those of the whole line, bought or not: a price keeps its pack when the line is ticked.
 */
function packOf({ shelf, unit, exact, kind }: LineDraft, packs: ShoppingLine['packs']): Amount {
  const isKnown = shelf !== null || (exact && kind === 'food');
  return (isKnown ? packs[0]?.size : undefined) ?? { amount: shelf?.sizes.at(-1) ?? new Big(1), unit };
}

/** True when what is missing beside what is held is less than portions feel. */
function isCovered(event: Event, { kind, need }: LineDraft, held: Big, missing: Big): boolean {
  return kind === 'food' && held.gt(0) && missing.gt(0) && missing.lte(need.times(settle(event, 'buy.shortWithin').value));
}

/** A line of the list from what it is made from: less the larder, less what is bought, in packs. */
export function makeLine(event: Event, draft: LineDraft): ShoppingLine {
  const { key, kind, id, row, name, section, unit, need } = draft;
  const larder = inLarder(event, id, row, unit);
  const noted = notedAt(event, key, row, unit);
  const held = larder.amount.plus(noted.bought);
  const short = need.minus(held);
  const covered = isCovered(event, draft, held, short);
  const missing = covered ? new Big(0) : short;
  const packs = packsFor(event, draft, missing);
  const unbought = need.minus(larder.amount);
  const whole = noted.bought.lte(0) && packs.length > 0 ? packs : packsFor(event, draft, unbought.gt(0) ? unbought : need);
  const buy: Amount = { amount: together(packs), unit };
  const bought: Amount = { amount: noted.bought, unit };
  const shortFigure = missingFigure(draft.needFigure, [
    { key: 'larder', amount: larder, path: larderPath(event, id, unit) }, { key: 'bought', amount: bought, path: boughtPath(event, key, unit) },
  ], short.toNumber());
  const worth = covered ? coveredFigure(shortFigure, draft.needFigure, settle(event, 'buy.shortWithin')) : buyFigure(shortFigure, packs, buy, draft.shelf === null);
  const price = priceOf(event, id, row, packOf(draft, whole));
  const cost = costOf(price, buy);
  return {
    key, kind, ingredient: id, name, section,
    need: { amount: need, unit }, needFigure: draft.needFigure, origins: draft.origins,
    larder, bought, buy, buyFigure: worth, packs,
    state: stateOf(noted, missing),
    note: noted.bought.gt(0) ? noteOf(noted, buy, together(packsFor(event, draft, unbought))) : null,
    price,
    ...(cost === null ? {} : { cost, costFigure: costFigure(event, id, cost, price, buy) }),
    keepsDays: row?.keepsDays ?? null,
    when: draft.when,
    shopper: shopperOf(event, key, section),
    optional: false,
    ...(draft.reserve === null ? {} : { reserve: draft.reserve }),
  };
}

/** The dishes of a line with their shares, one entry per dish. */
function originsOf({ needs, unit }: Purchase): ShoppingLine['origins'] {
  const byDish = new Map<string, Big>();
  for (const { need, bought } of needs) byDish.set(need.origin, (byDish.get(need.origin) ?? new Big(0)).plus(bought.amount));
  return [...byDish].map(([dish, amount]) => ({ dish, amount: { amount, unit } }));
}

/** What a purchase makes a line from. */
export function draftOf(event: Event, purchase: Purchase, nameOf: (origin: string) => Term['label']): LineDraft {
  const { key, id, row, unit, sold } = purchase;
  const origins = originsOf(purchase);
  const need = origins.reduce((sum, o) => sum.plus(o.amount.amount), new Big(0));
  return {
    key, kind: isThing(id) ? 'thing' : 'food', id, row, unit, need, origins,
    name: row?.name ?? purchase.needs.find((n) => n.need.name !== undefined)?.need.name ?? foodCalled(id, event.recipes),
    section: row?.section ?? otherSection,
    needFigure: needFigure(purchase, need, nameOf),
    shelf: sold && row !== undefined ? shelfOf(row, event.preferences.units, unit) : null,
    exact: !sold && !isThing(id), when: null, reserve: reserveFigure(purchase, nameOf),
  };
}
