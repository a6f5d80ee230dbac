import type { Event } from '../event';
import type { KitchenPlan } from '../kitchen';
import type { MenuPlan } from '../menu';
import { planBowls } from './bowls-plan';
import { fryLines } from './lines';
import { oilPlans } from './oil';
import { loadRemedy } from './remedy';
import { scheduleFrying, type DishSchedule } from './schedule';
import { oilSessions } from './sessions';
import { batchCount, batterKg, bowlCount, fillTotal, oilToBuy, pieceCount, uptakeTotal } from './totals';
import type { FryingPlan, LoadPlan } from './types';

/**
 * Everything fried: loads, batches, bowls, oil, and who would go without. Deterministic; whole minutes. Served and unmet of every fried
 * dish add up to its demand exactly. Never throws for an event that `parseEvent` accepted.
 */
export function planFrying(event: Event, menu: MenuPlan, kitchen: KitchenPlan): FryingPlan {
  const schedule = scheduleFrying(event, menu, fryLines(event, kitchen));
  const { bowls, batches } = planBowls(event, schedule);
  const oil = oilPlans(event, batches, schedule.dishes);
  const fillLitres = fillTotal(oil);
  const uptakeLitres = uptakeTotal(oil);
  return {
    loads: schedule.dishes.flatMap((d) => loadsOf(event, d)), batches, bowls,
    served: schedule.dishes.map((d) => d.served), shortages: schedule.dishes.flatMap((d) => d.shortages), leads: schedule.dishes.flatMap((d) => d.leads),
    sessions: oilSessions(event, batches, oil), oil, fillLitres, uptakeLitres, buyLitres: oilToBuy(event, fillLitres, uptakeLitres),
    batchCount: batchCount(schedule.dishes, batches), bowlCount: bowlCount(event, bowls), batterKg: batterKg(bowls), pieces: pieceCount(batches),
    problems: schedule.dishes.flatMap((d) => (d.problem === null ? [] : [d.problem])),
  };
}

/** One load for every pan, so that a view can say what each pan takes; equal pans share figures and remedy. */
function loadsOf(event: Event, { dish, parts }: DishSchedule): LoadPlan[] {
  return parts.flatMap((part) => {
    const remedy = loadRemedy(event, part);
    return part.line.pans.map((p) => ({ ...part.load.plan, station: part.line.station.id, dish: dish.id, pan: p.pan.id, remedy }));
  });
}
