import type { Event } from '../event';
import type { Figure } from '../figure';
import type { KitchenPlan } from '../kitchen';
import type { MenuPlan } from '../menu';
import type { Message } from '../words';
import { planBowls } from './bowls-plan';
import { fryLines } from './lines';
import { oilPlans } from './oil';
import { oilCareNotes } from './oil-care';
import { oilChangeProblems } from './oil-change';
import { changeTotal, oilEnds } from './oil-end';
import { loadRemedies } from './remedy';
import { scheduleFrying, type DishSchedule } from './schedule';
import { oilSessions } from './sessions';
import { batchBound, batchCount, batterKg, bowlCount, fillTotal, oilToBuy, pieceCount, uptakeTotal, waitPlan } from './totals';
import type { FryingPlan, LoadPlan, UnmetBound } from './types';
import { unmetBound } from './unmet-bound';

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
  const { sessions, pauses } = oilSessions(event, batches, oil, schedule.dishes);
  const ends = oilEnds(event, batches, oil, sessions, schedule.dishes);
  const panName = (id: string): string => event.kitchen.pans.find((p) => p.id === id)?.name ?? id;
  let bound: Figure | null = null;
  let short: UnmetBound | null | undefined;
  return {
    loads: schedule.dishes.flatMap((d) => loadsOf(event, d)), batches, bowls,
    served: schedule.dishes.map((d) => d.served), shortages: schedule.dishes.flatMap((d) => d.shortages), leads: schedule.dishes.flatMap((d) => d.leads),
    sessions, pauses, oil, oilEnds: ends, fillLitres, uptakeLitres, buyLitres: oilToBuy(event, fillLitres, uptakeLitres, changeTotal(event, ends)),
    batchCount: batchCount(schedule.dishes, batches), bowlCount: bowlCount(event, bowls), batterKg: batterKg(bowls), pieces: pieceCount(batches),
    waits: schedule.dishes.flatMap((d) => waitPlan(d, batches)), care: oilCareNotes(batches, schedule.dishes, panName),
    get batchBound() {
      return (bound ??= batchBound(schedule.dishes));
    },
    get unmetBound() {
      return (short === undefined ? (short = unmetBound(event, schedule.dishes)) : short);
    },
    problems: [...schedule.dishes.flatMap((d) => (d.problem === null ? [] : [d.problem])), ...oilChangeProblems(event, batches, oil, ends)],
  };
}

/** One load for every pan, so that a view can say what each pan takes; equal pans share figures and remedies. Remedies size many loads again: only for whoever reads them. */
function loadsOf(event: Event, { dish, parts }: DishSchedule): LoadPlan[] {
  return parts.flatMap((part) => {
    let found: readonly Message[] | null = null;
    const remedies = (): readonly Message[] => (found ??= loadRemedies(event, part));
    return part.line.pans.map((p) => ({
      ...part.load.plan, station: part.line.station.id, dish: dish.id, pan: p.pan.id,
      get remedies() {
        return remedies();
      },
      get remedy() {
        return remedies()[0] ?? null;
      },
    }));
  });
}
