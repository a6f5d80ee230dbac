import { highest, lowest } from '../measure';
import type { BuyingPlan } from '../buying';
import type { DrinksPlan } from '../drinks';
import type { Event } from '../event';
import type { FryingPlan } from '../frying';
import type { GuestsPlan } from '../guests';
import { settle } from '../household';
import type { KitchenPlan } from '../kitchen';
import type { DishPlan, MenuPlan } from '../menu';
import { changedJobs, withPersonRoles } from './changed-jobs';
import { checkJobs } from './check-jobs';
import { bowlJobs, brewJobs, fillJobs, fillRoom } from './fixed-jobs';
import { afterJobs, coolJobs, oilAwayJobs, serveJobs, setUpJobs, shopJobs } from './house-jobs';
import { lengthOf, type Job, type Placed } from './job';
import { mealJobs } from './meal-jobs';
import { oilOfStations, type Relief } from './oil-watch';
import { placeBackward, type Nudge } from './order';
import { ownJobs } from './own-jobs';
import { aroundPinned, placePinned } from './pinned';
import { place, rangeOf, takeBack } from './place';
import { resourcesOf, type Resources } from './resources';
import { noRest, placeInRelief, placeRest, restsOf, type Rest } from './rests';
import { stepJobs } from './step-jobs';
import type { OffJob } from './types';
import { potWashing, roundJobs, storeJobs } from './upkeep-jobs';
import type { Message } from '../words';

/** What the day is planned from. */
export interface DayInputs {
  readonly guests: GuestsPlan;
  readonly menu: MenuPlan;
  readonly buying: BuyingPlan;
  readonly kitchen: KitchenPlan;
  readonly frying: FryingPlan;
  readonly drinks: DrinksPlan;
}

/** The order in which jobs are placed, and whether somebody takes over at the oil so that who fries has a break. */
export interface Order {
  readonly setUpFirst: boolean;
  readonly restsFirst: boolean;
  readonly relief: Relief;
  /** Minutes by which single recipe steps count as due later (or sooner) when their order is made; for a search. */
  readonly nudge?: Nudge | undefined;
}

/** Everything placed once. */
export interface LaidOut {
  readonly resources: Resources;
  readonly placed: readonly Placed[];
  readonly off: readonly OffJob[];
  /** Who has no room for a break or a meal. */
  readonly noRests: readonly { readonly person: string; readonly message: Message }[];
}

/** First minute a dish's own preparation is needed: first bowl, put-in or brew round, else the first serving. */
function neededAt(dish: DishPlan, frying: FryingPlan, drinks: DrinksPlan): number | null {
  const times = [
    ...frying.bowls.filter((b) => b.dish === dish.id).map((b) => b.mixAt),
    ...frying.batches.filter((b) => b.dish === dish.id).map((b) => b.dropAt),
    ...drinks.rounds.filter((r) => r.drink === dish.id).map((r) => r.startAt),
  ];
  if (times.length > 0) return lowest(times);
  return dish.firstServed;
}

function allStepJobs({ menu, frying, drinks }: DayInputs, hands: number): Job[] {
  return menu.dishes.flatMap((dish) => {
    const at = neededAt(dish, frying, drinks);
    if (at === null) return [];
    const bowls = frying.bowls.filter((b) => b.dish === dish.id).length;
    return stepJobs(dish, Math.floor(at), bowls > 0 ? bowls : Math.max(1, Math.ceil(dish.factor - 1e-9)), hands);
  });
}

const isOpen = (job: Job): boolean => job.laid?.at === undefined;

const open = (jobs: readonly Job[]): readonly Job[] => jobs.filter(isOpen);

/** Places jobs one by one, each after those it waits for that are in the list. */
function placeEach(resources: Resources, jobs: readonly Job[]): Placed[] {
  const ends = new Map<string, number>();
  return jobs.map((job) => {
    const since = highest(job.after.map((id) => ends.get(id) ?? Number.NEGATIVE_INFINITY));
    const placed = place(resources, job, rangeOf(job, Number.POSITIVE_INFINITY, since));
    ends.set(job.id, placed.start + lengthOf(job));
    return placed;
  });
}

/** Jobs that have a minute in the plan of frying or drinks: at that minute with anybody who is free, and only when nobody is, later within their window, which is then said. */
function placeFixed(resources: Resources, jobs: readonly Job[]): Placed[] {
  const ends = new Map<string, number>();
  return jobs.map((job) => {
    const since = highest(job.after.map((id) => ends.get(id) ?? Number.NEGATIVE_INFINITY));
    const range = rangeOf(job, Number.POSITIVE_INFINITY, since);
    let placed = place(resources, job, { low: range.low, high: Math.max(range.low, Math.min(range.high, range.low)) });
    if (range.high > range.low && (!placed.things || (placed.who === null && job.stretches.some((s) => s.attention > 0)))) {
      takeBack(resources, placed);
      placed = place(resources, job, range);
    }
    const slid = placed.start > job.earliest + 1e-9 && job.stretches.some((s) => s.attention > 0);
    if (slid) placed = { ...placed, job: { ...job, note: { id: 'timeline.note.slid', params: { planned: job.earliest } } } };
    ends.set(job.id, placed.start + lengthOf(job));
    return placed;
  });
}

/** Pots stand until somebody has time to wash them, and are taken until then; where no pot can stand at all, it is washed at once by whoever can. */
function placeWashing(resources: Resources, steps: readonly Placed[], changed: (jobs: readonly Job[]) => readonly Job[]): Placed[] {
  return potWashing(resources.values, steps).flatMap(({ tries }): Placed[] => {
    const [first] = changed(tries.slice(0, 1));
    if (first === undefined) return [];
    if (first.laid?.at !== undefined) return [placePinned(resources, first, first.laid.at)];
    for (const job of tries) {
      const placed = place(resources, { ...job, roles: first.roles, ...(first.laid === undefined ? {} : { laid: first.laid }) }, { low: job.earliest, high: job.earliest });
      if (placed.things && placed.who !== null) return [placed];
      takeBack(resources, placed);
    }
    return [];
  });
}

function placeRests(resources: Resources, rests: readonly Rest[], noRests: { person: string; message: Message }[]): Placed[] {
  return rests.flatMap((rest): Placed[] => {
    const { at } = rest.job.laid ?? {};
    if (at !== undefined) return [placePinned(resources, rest.job, at)];
    const placed = placeRest(resources, rest);
    if (placed === null) noRests.push({ person: rest.job.roles[0] ?? '', message: noRest(resources, rest) });
    return placed === null ? [] : [placed];
  });
}

/**
 * Everything placed once: the hot oil first, then what the cook pinned, what frying and brewing fixed, setting up and recipe steps in this
 * order or the other, the house last; breaks before the recipe steps or in the gaps that are left.
 */
export function layOut(event: Event, inputs: DayInputs, order: Order): LaidOut {
  const { guests, menu, buying, frying, drinks } = inputs;
  const resources = resourcesOf(withPersonRoles(event));
  const { values } = resources;
  const off: OffJob[] = [];
  const changed = (jobs: readonly Job[]): readonly Job[] => {
    const done = changedJobs(event, jobs);
    off.push(...done.off);
    return done.jobs;
  };
  const something = menu.dishes.length > 0;
  const hosting = something && event.menu.dishes.some((d) => d.served.kind !== 'fixed');
  const trip = Math.max(1, Math.round(settle(event, 'drinks.tripMinutes').value));
  const room = fillRoom(Math.round(settle(event, 'drinks.refillLead').value), trip);
  const fixed = changed([...bowlJobs(menu, frying, values.handsOn), ...brewJobs(menu, drinks, values.handsOn, room), ...fillJobs(drinks, trip, room)]);
  // Checklists first: two minutes each, and few minutes in which they make sense.
  const early = changed([...checkJobs(values, event, frying, hosting), ...(hosting ? [...setUpJobs(values, event, frying, drinks.dispensers.length > 0 || drinks.rounds.length > 0), ...mealJobs(values, event, menu)] : [])]);
  const steps = changed(allStepJobs(inputs, values.handsOn));
  const cooling = something ? coolJobs(values, event, menu) : [];
  const rest = changed([
    ...cooling, ...(something ? [...afterJobs(values, event, hosting ? guests.planned.value : 0), ...storeJobs(values, menu, cooling)] : []),
    ...(hosting ? [...serveJobs(values, event), ...roundJobs(values, event)] : []), ...(something ? oilAwayJobs(values, event, frying) : []),
  ]);
  const own = changed(ownJobs(event));
  // With nothing to cook and no job of her own there is nothing to rest from.
  const restJobs = something || own.length > 0 ? restsOf(resources) : [];
  const rested = new Map(changed(restJobs.map((r) => r.job)).map((job) => [job.id, job]));
  const rests = restJobs.flatMap((r): Rest[] => { const job = rested.get(r.job.id); return job === undefined ? [] : [{ ...r, job }]; });

  const oil = oilOfStations(event, resources, frying, order.relief);
  const pinned = [...early, ...steps, ...rest, ...own].flatMap((job) => (job.laid?.at === undefined ? [] : [placePinned(resources, job, job.laid.at)]));
  const noRests: { person: string; message: Message }[] = [];
  const inRelief = rests.map((r) => (r.job.laid === undefined ? placeInRelief(resources, r) : null));
  const others = rests.filter((_, at) => inRelief[at] === null);
  const placedFixed = placeFixed(resources, fixed);
  const before = order.setUpFirst || order.restsFirst ? placeEach(resources, open(early)) : [];
  const restsBefore = order.restsFirst ? placeRests(resources, others, noRests) : [];
  const ownFirst = placeEach(resources, open(own));
  const placedSteps = placeBackward(resources, aroundPinned(open(steps), pinned), order.nudge);
  const allSteps = [...placedSteps, ...pinned.filter((p) => p.job.kind === 'step')];
  const firstWork = (dishes: ReadonlySet<string>): number =>
    lowest(allSteps.filter((p) => p.job.about.dish !== undefined && dishes.has(p.job.about.dish)).map((p) => p.start));
  const shopping = something ? changed(shopJobs(values, buying, firstWork, event.day)) : [];
  const late = placeEach(resources, [...(order.setUpFirst || order.restsFirst ? [] : open(early)), ...open(rest), ...open(shopping)]);
  const shopPinned = shopping.flatMap((job) => (job.laid?.at === undefined ? [] : [placePinned(resources, job, job.laid.at)]));
  const washing = placeWashing(resources, allSteps, changed);
  const restsAfter = order.restsFirst ? [] : placeRests(resources, others, noRests);
  return { resources, off, noRests, placed: [...oil, ...pinned, ...shopPinned, ...inRelief.flatMap((p) => p ?? []), ...placedFixed, ...restsBefore, ...before, ...ownFirst, ...placedSteps, ...late, ...washing, ...restsAfter] };
}
