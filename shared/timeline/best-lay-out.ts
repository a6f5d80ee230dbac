import { chosenOrder } from './chosen-order';
import { worthOf } from './day-worth';
import type { DayDraft } from './draft';
import { lengthOf, type Placed } from './job';
import { layOut, type LaidOut, type Order } from './lay-out';

/** Jobs without somebody they need or without their things. */
const missing = (placed: readonly Placed[]): number =>
  placed.filter((p) => !p.things || (p.who === null && p.job.stretches.some((s) => s.attention > 0))).length;

/** A fry station set up long before its oil is lit stands in the way and is set up twice. Unit: minutes; common practice, no source. */
const soonEnough = 60;
const setUpLongBefore = (placed: readonly Placed[]): number =>
  placed.filter((p) => p.job.kind === 'setUp' && p.job.about.station !== undefined && p.job.latest - p.start - lengthOf(p.job) > soonEnough).length;

/** Orders in which the day is laid out until one has everything; the first of the best is kept. */
export const orders: readonly Order[] = [
  { setUpFirst: false, restsFirst: false, relief: 'middle' }, { setUpFirst: false, restsFirst: false, relief: 'early' }, { setUpFirst: false, restsFirst: false, relief: 'late' }, { setUpFirst: false, restsFirst: true, relief: 'middle' },
  { setUpFirst: true, restsFirst: false, relief: 'middle' }, { setUpFirst: false, restsFirst: false, relief: null }, { setUpFirst: true, restsFirst: false, relief: null },
];

/** Jobs placed before the first answer is given: a small day is laid out in every order, a large one twice. Longer looking is for `improveDay`. */
const jobsAtOnce = 1000;

/** Whether anybody is at the oil longer than without a break, so that it matters where somebody takes over. */
const longAtOil = ({ draft, placed }: LaidOut): boolean =>
  placed.length > 0 && draft.inputs.frying.sessions.some((s) => s.heatOffAt - s.heatOnAt > draft.resources.values.breakEvery);

const frees = (o: Order): number => (o.relief === 'late' ? 0 : o.setUpFirst ? 1 : o.relief === null ? 2 : 3);

/** The orders left to try after the first: where jobs have nobody, what frees hands comes first; where only breaks are missing, what gives breaks. */
function laterOrders(first: LaidOut): readonly Order[] {
  const rest = orders.slice(1);
  const relevant = longAtOil(first) ? rest : rest.filter((o) => o.relief === 'middle');
  return missing(first.placed) === 0 ? relevant : relevant.toSorted((x, y) => frees(x) - frees(y));
}

/** How bad a day is: a job without hands weighs more than any number of breaks. */
const badness = (laidOut: LaidOut): number => missing(laidOut.placed) * 1000 + setUpLongBefore(laidOut.placed) * 10 + laidOut.noRests.length;

/** The day laid out in the order the cook has taken, while it leaves no more undone than the best of the others; else in the best of those. */
export function bestLayOut(draft: DayDraft): LaidOut {
  const chosen = chosenOrder(draft.event);
  if (chosen === null) return bestPlain(draft);
  const laidOut = layOut(draft, chosen);
  if (worthOf(laidOut).undone === 0) return laidOut;
  const plain = bestPlain(draft);
  return worthOf(laidOut).undone <= worthOf(plain).undone ? laidOut : plain;
}

/** The day laid out in the order that leaves the least undone, of as many orders as there is time for. */
function bestPlain(draft: DayDraft): LaidOut {
  const [plain] = orders;
  if (plain === undefined) throw new Error('there is an order to try');
  const first = layOut(draft, plain);
  let best = { laidOut: first, bad: badness(first) };
  const tries = Math.max(1, Math.floor(jobsAtOnce / Math.max(1, first.placed.length)) - 1);
  for (const order of best.bad === 0 ? [] : laterOrders(first).slice(0, tries)) {
    const laidOut = layOut(draft, order);
    const bad = badness(laidOut);
    if (bad < best.bad) best = { laidOut, bad };
    if (bad === 0) break;
  }
  return best.laidOut;
}
