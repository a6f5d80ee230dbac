import { highest, lowest } from '../measure';
import type { BuyingPlan } from '../buying';
import type { DrinksPlan } from '../drinks';
import type { Event } from '../event';
import type { FryingPlan } from '../frying';
import type { GuestsPlan } from '../guests';
import { settle } from '../household';
import type { KitchenPlan } from '../kitchen';
import type { DishPlan, MenuPlan } from '../menu';
import { breakNotes } from './breaks';
import { busyFigure } from './busy';
import { gasOf } from './gas';
import { bowlJobs, brewJobs, fillJobs } from './fixed-jobs';
import { afterJobs, oilAwayJobs, serveJobs, setUpJobs, shopJobs } from './house-jobs';
import { mealJobs } from './meal-jobs';
import { lengthOf, type Job, type Placed } from './job';
import { oilOfStation } from './oil-watch';
import { placeBackward } from './order';
import { overloadsOf } from './overload';
import { place, rangeOf } from './place';
import { resourcesOf, type Resources } from './resources';
import { stepJobs } from './step-jobs';
import { tasksOf } from './tasks';
import type { TimelinePlan } from './types';

/** What the day is planned from. */
export interface DayInputs {
  readonly guests: GuestsPlan;
  readonly menu: MenuPlan;
  readonly buying: BuyingPlan;
  readonly kitchen: KitchenPlan;
  readonly frying: FryingPlan;
  readonly drinks: DrinksPlan;
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

/** Places jobs one by one, each after those it waits for. */
function placeEach(resources: Resources, jobs: readonly Job[]): Placed[] {
  const ends = new Map<string, number>();
  return jobs.map((job) => {
    const since = highest(job.after.map((id) => ends.get(id) ?? Number.NEGATIVE_INFINITY));
    const placed = place(resources, job, rangeOf(job, Number.POSITIVE_INFINITY, since));
    ends.set(job.id, placed.start + lengthOf(job));
    return placed;
  });
}

/** Jobs without somebody they need or without their things. */
const missing = (placed: readonly Placed[]): number =>
  placed.filter((p) => !p.things || (p.who === null && p.job.stretches.some((s) => s.attention > 0))).length;

/** Everything placed once: what frying and brewing fixed first, then setting up and recipe steps in this order or the other, the house last. */
function layOut(event: Event, inputs: DayInputs, setUpFirst: boolean): { readonly resources: Resources; readonly placed: readonly Placed[] } {
  const { guests, menu, buying, frying, drinks } = inputs;
  const resources = resourcesOf(event);
  const { values } = resources;
  const oil = event.kitchen.stations.flatMap((station) => oilOfStation(event, resources, frying, station));
  const fixed = placeEach(resources, [...bowlJobs(menu, frying, values.handsOn), ...brewJobs(menu, drinks, values.handsOn), ...fillJobs(drinks, Math.max(1, Math.round(settle(event, 'drinks.tripMinutes').value)))]);
  const something = menu.dishes.length > 0;
  const hosting = something && event.menu.dishes.some((d) => d.served.kind !== 'fixed');
  const early = hosting ? [...setUpJobs(values, event, frying, drinks.dispensers.length > 0 || drinks.rounds.length > 0), ...mealJobs(values, event, menu)] : [];
  const before = setUpFirst ? placeEach(resources, early) : [];
  const steps = placeBackward(resources, allStepJobs(inputs, values.handsOn));
  const firstWork = (dishes: ReadonlySet<string>): number =>
    lowest(steps.filter((p) => p.job.about.dish !== undefined && dishes.has(p.job.about.dish)).map((p) => p.start));
  const house = placeEach(resources, [
    ...(setUpFirst ? [] : early), ...(something ? afterJobs(values, event, menu, hosting ? guests.planned.value : 0) : []),
    ...(hosting ? serveJobs(values, event) : []), ...(something ? [...shopJobs(values, buying, firstWork), ...oilAwayJobs(values, event, frying)] : []),
  ]);
  return { resources, placed: [...oil, ...fixed, ...before, ...steps, ...house] };
}

/**
 * The day: every job on the people, burners, pots, pans and counter places there are. What frying and brewing fixed comes first, recipe
 * steps backward from serving, the jobs of the house last. Nobody and nothing is booked twice; what cannot be is named in `overloads`.
 */
export function planDay(event: Event, inputs: DayInputs): TimelinePlan {
  const first = layOut(event, inputs, false);
  // Where somebody or something is missing, the other order is tried; the first one is kept on a tie.
  const other = missing(first.placed) === 0 ? first : layOut(event, inputs, true);
  const { resources, placed } = missing(other.placed) < missing(first.placed) ? other : first;
  const tasks = tasksOf(resources, placed);
  return {
    tasks,
    overloads: overloadsOf(resources, placed),
    notes: breakNotes(event, tasks, resources.values),
    critical: tasks.filter((t) => t.slack === 0).map((t) => t.id),
    busy: event.people.map((p) => ({ person: p.id, minutes: busyFigure(tasks, p.id) })),
    gas: gasOf(event, tasks),
  };
}
