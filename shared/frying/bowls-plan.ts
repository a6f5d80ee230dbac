import { Big } from 'big.js';
import type { Event } from '../event';
import { settle } from '../household';
import { minutes, scaleAmount } from '../measure';
import type { DishPlan, ScaledLine } from '../menu';
import { fewestBowls } from './exact';
import type { Schedule } from './schedule';
import type { Batch, Bowl } from './types';

/** Menu lines of a dish for so many of its pieces. Exact shares: all bowls together take what the menu says for these pieces. */
export function linesFor(dish: DishPlan, pieces: number): ScaledLine[] {
  const share = dish.portions.value > 0 ? new Big(pieces).div(dish.portions.value) : new Big(0);
  return dish.lines.map((line) => ({ ...line, amount: scaleAmount(line.amount, share) }));
}

/** Bowls of batter for all batches, numbered in order of ready, and the batches with the bowls they take from. */
export function planBowls(event: Event, schedule: Schedule): { readonly bowls: readonly Bowl[]; readonly batches: readonly Batch[] } {
  const mixing = Math.round(settle(event, 'bowl.mixMinutes').value);
  const kgPerBowl = event.kitchen.bowlLitres * settle(event, 'bowl.fill').value * settle(event, 'batter.kgPerLitre').value;
  const found = schedule.dishes.flatMap(({ dish, frying }) => {
    const life = frying.bowlMinutes;
    if (life === null) return [];
    const size = Math.max(1, Math.floor((kgPerBowl * 1000) / frying.pieceBatterG + 1e-9));
    return [...new Set(schedule.batches.filter((b) => b.dish === dish.id).map((b) => b.station))].flatMap((station) => {
      const mine = schedule.batches.filter((b) => b.dish === dish.id && b.station === station);
      return fewestBowls(mine.map((b) => ({ at: b.dropAt, pieces: b.pieces })), size, Math.floor(life)).map((run) => ({
        batches: run.takes.map((t) => mine[t.batch]?.number ?? 0),
        readyAt: run.readyAt,
        make: (number: number): Bowl => ({
          number, dish: dish.id, station, mixAt: minutes(run.readyAt - mixing), readyAt: minutes(run.readyAt), useBy: minutes(run.readyAt + Math.floor(life)),
          pieces: run.pieces, batterKg: (run.pieces * frying.pieceBatterG) / 1000,
          // Exact amounts take more time than the whole schedule, and only a printed sheet reads them: worked out when asked for.
          get lines() {
            return linesFor(dish, run.pieces);
          },
        }),
      }));
    });
  });
  const numbered = found.sort((a, b) => a.readyAt - b.readyAt).map(({ make, batches }, i) => ({ batches, bowl: make(i + 1) }));
  const bowlsOf: number[][] = schedule.batches.map(() => []);
  for (const { batches, bowl } of numbered) for (const number of batches) bowlsOf[number - 1]?.push(bowl.number);
  return { bowls: numbered.map((n) => n.bowl), batches: schedule.batches.map((b) => ({ ...b, bowls: bowlsOf[b.number - 1] ?? [] })) };
}
