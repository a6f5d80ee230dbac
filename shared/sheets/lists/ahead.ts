import type { Step } from '../../event';
import type { DishPlan } from '../../menu';
import type { Plan } from '../../plan';
import type { Task } from '../../timeline';
import { dayRows, type DayRow } from '../day/rows';

/** Where the result of a step is kept. */
export type KeepingPlace = NonNullable<Step['keeps']>['place'];

/** A job done ahead: its row (with the part that runs by itself), the dish and the recipe step it stands for. */
export interface AheadJob {
  readonly row: DayRow;
  /** The job itself: first of the row. */
  readonly task: Task;
  readonly dish: DishPlan | undefined;
  readonly step: Step | undefined;
}

/** The recipe step a task stands for: the one whose id is a whole part of the task's id. */
function stepOf(task: Task, dish: DishPlan | undefined): Step | undefined {
  const parts = task.id.split(/[.:/]/);
  return dish?.recipe.steps.find((step) => parts.includes(step.id));
}

/** True when no guests come: a day of cooking for the household has no doors to open, and all of it is made ahead. */
export const isHouseholdDay = (plan: Plan): boolean => plan.guests.adults.value + plan.guests.children.value === 0;

/** Jobs with the recipes before the doors open (all of them when no guests come), by start. */
export const madeAhead = (plan: Plan): readonly AheadJob[] => recipeJobs(plan).filter(({ task }) => isHouseholdDay(plan) || task.start < plan.event.opensAt);

/** All jobs with the recipes, by start. */
export function recipeJobs(plan: Plan): readonly AheadJob[] {
  return dayRows(plan.day.tasks.filter((t) => t.kind === 'step'), plan.frying, 'own').flatMap((row) => {
    const [task] = row.tasks;
    if (task === undefined) return [];
    const dish = plan.menu.dishes.find((d) => d.id === task.dish);
    return [{ row, task, dish, step: stepOf(task, dish) }];
  });
}
