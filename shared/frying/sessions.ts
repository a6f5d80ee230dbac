import type { Event } from '../event';
import { settle } from '../household';
import { minutes } from '../measure';
import type { Batch, OilPlan, OilSession } from './types';

/**
 * From heat-on to heat-off of each pan. Between batches further apart than the settled gap the heat goes off and the oil is heated again;
 * where reheating would start before the heat went off, it stays on.
 */
export function oilSessions(event: Event, batches: readonly Batch[], oil: readonly OilPlan[]): OilSession[] {
  const gap = settle(event, 'fry.sessionGap').value;
  const margin = Math.round(settle(event, 'fry.heatMargin').value);
  return oil.flatMap(({ pan, heatUpMinutes }) => {
    const mine = batches.filter((b) => b.pan === pan);
    const sessions: { station: string; pan: string; from: number; ready: number; off: number }[] = [];
    for (const b of mine) {
      const ready = b.dropAt - margin;
      const from = ready - Math.ceil(heatUpMinutes.value - 1e-9);
      const last = sessions.at(-1);
      if (last === undefined || (b.dropAt - last.off > gap && from > last.off)) sessions.push({ station: b.station, pan, from, ready, off: b.panFreeAt });
      else last.off = Math.max(last.off, b.panFreeAt);
    }
    return sessions.map((s) => ({ station: s.station, pan, heatOnAt: minutes(s.from), readyAt: minutes(s.ready), heatOffAt: minutes(s.off) }));
  });
}
