import { lowest } from '../measure';
import type { BuyingPlan } from '../buying';
import type { CookingPlan } from '../cooking';
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
import { afterJobs, coolJobs, oilAwayJobs, serveJobs, setUpJobs, tripsFor, type Trip } from './house-jobs';
import type { Job } from './job';
import { freshJobs } from './fresh-jobs';
import { mealJobs } from './meal-jobs';
import { mealStepJobs } from './meal-steps';
import { oilStations, type OilStation } from './oil-jobs';
import { ownJobs } from './own-jobs';
import { aroundPinned } from './pinned';
import { bookedNow, resourcesOf, type Booked, type Resources } from './resources';
import { restsOf, type Rest } from './rests';
import { stepJobs } from './step-jobs';
import { stepOrders, type StepOrders } from './order';
import type { OffJob } from './types';
import { roundJobs, storeJobs } from './upkeep-jobs';

/** What the day is planned from. */
export interface DayInputs {
  readonly guests: GuestsPlan;
  readonly menu: MenuPlan;
  readonly buying: BuyingPlan;
  readonly kitchen: KitchenPlan;
  readonly frying: FryingPlan;
  readonly drinks: DrinksPlan;
  readonly cooking: CookingPlan;
}

/** The jobs of a day before any of them is placed: the same in every order in which it is laid out. */
export interface DayDraft {
  readonly event: Event;
  readonly inputs: DayInputs;
  readonly resources: Resources;
  /** Nothing booked but the hours of the people. */
  readonly blank: Booked;
  readonly oil: readonly OilStation[];
  readonly fixed: readonly Job[];
  readonly early: readonly Job[];
  readonly rest: readonly Job[];
  readonly own: readonly Job[];
  readonly rests: readonly Rest[];
  /** Jobs that stand at a minute, in the order in which they are placed. */
  readonly pinned: readonly Job[];
  /** The other recipe steps, with windows round the pinned jobs. */
  readonly steps: StepOrders;
  readonly off: readonly OffJob[];
  /** Trips to the shops; none when there is nothing to cook. */
  readonly trips: readonly Trip[];
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

function allStepJobs({ menu, frying, drinks, cooking }: DayInputs, hands: number, nameOfPot: (id: string) => string): Job[] {
  return menu.dishes.flatMap((dish) => {
    const at = neededAt(dish, frying, drinks);
    if (at === null) return [];
    const made = cooking.dishes.find((c) => c.dish === dish.id);
    if (made !== undefined) return mealStepJobs(dish, made, hands, nameOfPot);
    const bowls = frying.bowls.filter((b) => b.dish === dish.id).length;
    return stepJobs(dish, Math.floor(at), bowls > 0 ? bowls : Math.max(1, Math.ceil(dish.factor - 1e-9)), hands);
  });
}

/** Whether a job has no minute of its own. */
export const isOpen = (job: Job): boolean => job.laid?.at === undefined;

/** Every job of the day but shopping and the washing of pots, which follow from where the others lie. */
export function draftDay(event: Event, inputs: DayInputs): DayDraft {
  const { guests, menu, frying, drinks } = inputs;
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
  const early = changed([...checkJobs(values, event, frying, hosting), ...(hosting ? [...setUpJobs(values, event, frying, drinks.dispensers.length > 0 || drinks.rounds.length > 0), ...mealJobs(values, event, menu), ...freshJobs(values, event, menu, inputs.cooking)] : [])]);
  const steps = changed(allStepJobs(inputs, values.handsOn, (id) => event.kitchen.pots.find((p) => p.id === id)?.name ?? id));
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
  const pinned = [...early, ...steps, ...rest, ...own].filter((job) => !isOpen(job));
  return {
    event, inputs, resources, blank: bookedNow(resources), oil: oilStations(event, values, frying), fixed, early: early.filter(isOpen), rest: rest.filter(isOpen), own: own.filter(isOpen), rests, pinned,
    steps: stepOrders(aroundPinned(steps.filter(isOpen), pinned.map((job) => ({ job, start: job.laid?.at ?? job.earliest })))), off, trips: something ? tripsFor(values, inputs.buying, event.day) : [],
  };
}
