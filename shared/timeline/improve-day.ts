import type { DayOrder, Event } from '../event';
import { chosenOrder, keptOrder } from './chosen-order';
import { compareWorth, worthOf, type DayWorth } from './day-worth';
import { orders } from './best-lay-out';
import type { DayInputs } from './draft';
import { layOut, type LaidOut, type Order } from './lay-out';
import { dayOf } from './plan-day';
import { standingDay } from './printed-jobs';
import { pick, randomFrom, type Random } from './schedule';
import type { TimelinePlan } from './types';

/** What a better day is looked for. */
export interface DayProblem {
  readonly event: Event;
  readonly inputs: DayInputs;
}

/** A day that is strictly better than the one at once. */
export interface BetterDay {
  readonly day: TimelinePlan;
  readonly before: DayWorth;
  readonly after: DayWorth;
  /** Tasks that lie elsewhere or are somebody else's, so that an edit can lay them down. Minutes from midnight. */
  readonly moves: readonly { readonly task: string; readonly start: number; readonly who: readonly string[] }[];
  /** The order that gives it, for the event to keep. */
  readonly order: DayOrder;
  /** Days laid out. */
  readonly tries: number;
}

/** Minutes by which a step is nudged at most, and how many steps at once. */
const reach = { minutes: 90, steps: 3 };

/** One other order: a few steps count as due sooner or later, now and then the kinds of work change places. */
function changed(order: Order, steps: readonly string[], random: Random): Order {
  const nudge = new Map(order.nudge);
  for (let k = 1 + pick(random, reach.steps); k > 0; k -= 1) {
    const id = steps[pick(random, steps.length)];
    if (id !== undefined) nudge.set(id, pick(random, 2 * reach.minutes + 1) - reach.minutes);
  }
  const other = random() < 0.1 ? orders[pick(random, orders.length)] : undefined;
  return { ...(other ?? order), nudge };
}

const movesOf = (before: TimelinePlan, after: TimelinePlan): BetterDay['moves'] => {
  const known = new Map(before.tasks.map((t) => [t.id, t]));
  return after.tasks.flatMap(({ id, start, who }) => {
    const old = known.get(id);
    return old !== undefined && old.start === start && old.who.join(' ') === who.join(' ') ? [] : [{ task: id, start, who }];
  });
};

/**
 * Looks for a better day by laying it out again in other orders, so many times: what is undone or too early first, then fairness between
 * helpers, work late in the evening, and how long finished work stands. What is pinned, started or printed stays. Null when nothing
 * strictly better was found. The same start number finds the same day.
 * @param budget days to lay out, 1 or more.
 */
export function improveDay({ event, inputs }: DayProblem, startNumber: number, budget: number): BetterDay | null {
  const random = randomFrom(startNumber);
  const { draft, laidOut: first, letGo } = standingDay(event, inputs);
  const before = worthOf(first);
  const steps = first.placed.filter((p) => p.job.kind === 'step' && p.job.laid?.at === undefined).map((p) => p.job.id).toSorted();
  const chosen = chosenOrder(event);
  let best: { readonly laidOut: LaidOut; readonly worth: DayWorth; readonly order: Order | null } = { laidOut: first, worth: before, order: null };
  let walk: { readonly order: Order; readonly worth: DayWorth } | null = chosen === null ? null : { order: chosen, worth: before };
  for (let k = 0; k < budget; k += 1) {
    const plain = orders[k];
    const order: Order | undefined = walk === null || k < orders.length ? plain : changed(walk.order, steps, random);
    if (order === undefined) break;
    const laidOut = layOut(draft, order);
    const worth = worthOf(laidOut);
    // An order as good as the last is taken too: that is how a search leaves a plateau.
    if (walk === null || compareWorth(worth, walk.worth) <= 0) walk = { order, worth };
    if (compareWorth(worth, best.worth) < 0) best = { laidOut, worth, order };
  }
  if (best.order === null) return null;
  const day = dayOf(best.laidOut, letGo);
  return { day, before, after: best.worth, moves: movesOf(dayOf(first, letGo), day), order: keptOrder(best.order), tries: budget };
}
