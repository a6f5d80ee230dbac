import type { Event } from '../event';
import { settle } from '../household';
import { minutes } from '../measure';
import type { SizedLoad } from './load';
import type { DishSchedule } from './schedule';
import type { Batch, OilCurve, OilSession } from './types';

/** Seconds of one step: fine against the minute and a half in which a load takes most of its heat. */
const stepSeconds = 5;

/**
 * Temperature of the oil of one pan over the day, from its first heat-on to an hour after the last heat-off, stepped forward in time: the
 * burner at full while the oil is below frying heat and the fire is lit, the loss to the room, and what each batch takes, most of it at first
 * (the demand of `fry.dip`). The lowest of each minute, so that a fall shows.
 */
export function oilCurve(event: Event, load: SizedLoad, sessions: readonly OilSession[], batches: readonly Batch[], dishes: readonly DishSchedule[]): OilCurve {
  const start = Math.min(...sessions.map((s) => Number(s.heatOnAt)));
  const end = Math.max(...sessions.map((s) => Number(s.heatOffAt))) + 60;
  if (!Number.isFinite(start)) return { fromMinute: minutes(0), celsius: [] };
  const { oilKg, frying, state } = load.inputs;
  const [a, b, loss, metal, tau] = [settle(event, 'oil.cp.a').value, settle(event, 'oil.cp.b').value, settle(event, 'loss.UA').value / 1000, settle(event, `${state.pan.material}.cp`).value, load.inputs.tau.value];
  const room = event.kitchen.roomC;
  // What the burner gives this pan, from the net power at frying heat, so that pans sharing a burner share its heat here too.
  const power = load.inputs.netKw.value + loss * (frying.targetC - room);
  const takes = batches.map((batch) => ({ from: batch.dropAt * 60, ...demandOf(batch, dishes, tau) }));
  let celsius = settle(event, 'oil.coldC').value;
  const lowest: number[] = [];
  for (let second = start * 60; second < end * 60; second += stepSeconds) {
    const minute = second / 60;
    const lit = sessions.some((s) => s.heatOnAt <= minute && minute < s.heatOffAt);
    const taken = takes.reduce((sum, t) => (second >= t.from && second < t.from + t.seconds ? sum + t.peak * Math.exp((t.from - second) / tau) : sum), 0);
    const capacity = oilKg.value * (a + b * celsius) + state.pan.massKg * metal;
    const lost = loss * (celsius - room) + taken;
    // At frying heat the fire is turned down to what is lost; it never gives more than it can.
    const given = lit ? Math.min(power, Math.max(0, ((frying.targetC - celsius) * capacity) / stepSeconds + lost)) : 0;
    celsius += ((given - lost) * stepSeconds) / capacity;
    const at = Math.floor(minute) - start;
    lowest[at] = Math.min(lowest[at] ?? Infinity, celsius);
  }
  return { fromMinute: minutes(start), celsius: lowest };
}

/** Heat a batch asks for at first, kW, and for how long it is in the oil. */
function demandOf(batch: Batch, dishes: readonly DishSchedule[], tau: number): { readonly peak: number; readonly seconds: number } {
  const dish = dishes.find((d) => d.dish.id === batch.dish);
  const part = dish?.parts.find((p) => p.line.pans.some((s) => s.pan.id === batch.pan));
  if (part === undefined) return { peak: 0, seconds: 0 };
  const { pieceKg, heat, frying } = part.load.inputs;
  const seconds = frying.fryMinutes * 60;
  return { peak: (batch.pieces * pieceKg.value * heat.value) / (tau * (1 - Math.exp(-seconds / tau))), seconds };
}
