import type { Event } from '../event';
import { settle } from '../household';
import type { Message } from '../words';
import type { Batch, OilEnd, OilPlan } from './types';

/** A pan that fries nothing, on a burner that no frying pan stands on: it can be made ready while the first is still in use. */
function sparePan(event: Event, batches: readonly Batch[]): string | null {
  const used = new Set(batches.map((b) => b.pan));
  const burners = new Set(event.kitchen.pans.filter((p) => used.has(p.id)).map((p) => p.burner));
  return event.kitchen.pans.find((p) => !used.has(p.id) && !burners.has(p.burner))?.name ?? null;
}

/**
 * A change of oil that has no time: fresh oil has to be heated, and the hot pan may not be moved. Told with the minute a second pan has to
 * be lit, or with the fill that would last.
 */
export function oilChangeProblems(event: Event, batches: readonly Batch[], oil: readonly OilPlan[], ends: readonly OilEnd[]): Message[] {
  const spare = sparePan(event, batches);
  return ends.flatMap((end) => {
    const plan = oil.find((o) => o.pan === end.pan);
    const mine = batches.filter((b) => b.pan === end.pan);
    const pan = event.kitchen.pans.find((p) => p.id === end.pan)?.name ?? end.pan;
    if (plan === undefined) return [];
    const heat = Math.ceil(plan.heatUpMinutes.value - 1e-9);
    const lasts = lastingFill(event, plan, end);
    return end.changeAfter.flatMap((after): Message[] => {
      const at = mine.findIndex((b) => b.number === after);
      const [last, next] = [mine[at], mine[at + 1]];
      if (last === undefined || next === undefined) return [];
      const params = { pan, after, next: next.number, at: next.dropAt, heat };
      return spare === null
        ? [{ id: 'frying.problem.oilChange', params: { ...params, free: last.panFreeAt, litres: lasts } }]
        : [{ id: 'frying.problem.oilChangeSpare', params: { ...params, spare, light: next.dropAt - heat } }];
    });
  });
}

/** Litres to begin with so that one fill, topped up as planned, fries the whole day; up to the next half litre. */
function lastingFill(event: Event, { fillLitres, topUps }: OilPlan, { batterPerLitre, changeAfter }: OilEnd): number {
  const topped = topUps.reduce((sum, t) => sum + t.litres, 0);
  const batterKg = batterPerLitre.value * (fillLitres.value * (1 + changeAfter.length) + topped);
  return Math.ceil((batterKg / settle(event, 'oil.batterPerLitre').value - topped) * 2 - 1e-9) / 2;
}
