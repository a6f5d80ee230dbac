import type { Event } from '../event';
import { computed, figure, minus, sumOf, type Figure } from '../figure';
import { planGuests } from '../guests';
import { planKitchen } from '../kitchen';
import { planMenu, type MenuPlan } from '../menu';
import { fryLines } from './lines';
import { scheduleFrying, type Schedule } from './schedule';

/** Another plan for a dish: its pieces wait less. Plain values, so that a worker can send it. */
export interface FryOffer {
  readonly dish: string;
  /** Batches more than the fewest. */
  readonly more: number;
  readonly batchesNow: number;
  readonly batches: number;
  /** Minutes each batch's pieces wait, all together, now and then. */
  readonly waitsNow: readonly number[];
  readonly waits: readonly number[];
  readonly smallestNow: number;
  readonly smallest: number;
}

/** Waiting saved below this share of all is not worth a change of plan. */
const worthwhile = 0.02;

const total = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);

/**
 * For each fried dish the freshest plan with the fewest batches and with one more, worked out as the plan itself would be after the choice.
 * Offered only where pieces wait less or the smallest batch is larger, and nobody of any dish goes short for it. Some tens of milliseconds:
 * for a worker.
 */
export function fryOffers(event: Event): FryOffer[] {
  const menu = planMenu(event, planGuests(event));
  const now = scheduled(event, menu);
  return now.dishes.flatMap(({ dish }) => {
    const chosen = event.menu.dishes.find((d) => d.id === dish.id)?.fryFresh?.moreBatches ?? -1;
    return [0, 1].filter((more) => more !== chosen && more > chosen - 1).flatMap((more) => {
      const changed: Event = { ...event, menu: { ...event.menu, dishes: event.menu.dishes.map((d) => (d.id === dish.id ? { ...d, fryFresh: { moreBatches: more } } : d)) } };
      const then = scheduled(changed, menu);
      const offer = offerOf(dish.id, more, now, then);
      return offer !== null && worth(offer) && !shorter(now, then) ? [offer] : [];
    });
  });
}

const scheduled = (event: Event, menu: MenuPlan): Schedule => scheduleFrying(event, menu, fryLines(event, planKitchen(event)));

function offerOf(dish: string, more: number, now: Schedule, then: Schedule): FryOffer | null {
  const [a, b] = [now, then].map((s) => ({ pieces: s.batches.filter((x) => x.dish === dish).map((x) => x.pieces), waits: s.dishes.find((d) => d.dish.id === dish)?.waits ?? [] }));
  if (a === undefined || b === undefined || a.pieces.length === 0) return null;
  return { dish, more, batchesNow: a.pieces.length, batches: b.pieces.length, waitsNow: a.waits, waits: b.waits, smallestNow: Math.min(...a.pieces), smallest: Math.min(...b.pieces) };
}

function worth(o: FryOffer): boolean {
  const saved = total(o.waitsNow) - total(o.waits);
  return saved > worthwhile * total(o.waitsNow) || (saved >= 0 && o.smallest > o.smallestNow && o.batches === o.batchesNow);
}

/** Somebody goes short, or shorter, in the other plan. */
const shorter = (now: Schedule, then: Schedule): boolean => then.dishes.some((d, i) => total(d.served.unmet) > total(now.dishes[i]?.served.unmet ?? []));

/** Minutes of waiting an offer saves, all pieces together. */
export const offerSaves = (o: FryOffer): Figure => figure(total(o.waitsNow) - total(o.waits), 'min', () => ({
  rule: 'fry.saved',
  terms: [computed('now', { word: 'frying.term.waitingNow' }, o.waitsNow, 'min', 'frying.method.schedule'), computed('then', { word: 'frying.term.waitingThen' }, o.waits, 'min', 'frying.method.schedule')],
  sum: minus(sumOf('now'), sumOf('then')),
}));
