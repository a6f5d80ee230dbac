import type { Event } from '../event';
import { computed } from '../figure';
import { settle } from '../household';
import { minutes } from '../measure';
import { cooledAfter, gasFor, heatingAgain, heatUpFrom, keepingHot } from './heat';
import type { SizedLoad } from './load';
import { heaviestLoad } from './oil';
import type { DishSchedule } from './schedule';
import type { Batch, OilPause, OilPlan, OilSession } from './types';

interface Session {
  readonly station: string;
  readonly from: number;
  readonly ready: number;
  off: number;
}

/**
 * From heat-on to heat-off of each pan, and what is decided for each long pause between two batches. In a pause longer than the settled gap the
 * heat goes off and the oil, cooled by then, is heated again; in a shorter one, or where heating again would start before the heat went off,
 * it stays on low with somebody beside it.
 */
export function oilSessions(event: Event, batches: readonly Batch[], oil: readonly OilPlan[], dishes: readonly DishSchedule[]): { readonly sessions: readonly OilSession[]; readonly pauses: readonly OilPause[] } {
  const gap = settle(event, 'fry.sessionGap').value;
  const decide = settle(event, 'fry.pauseMin').value;
  const margin = Math.round(settle(event, 'fry.heatMargin').value);
  const sessions: OilSession[] = [];
  const pauses: OilPause[] = [];
  for (const { pan, heatUpMinutes } of oil) {
    const mine = batches.filter((b) => b.pan === pan);
    const load = heaviestLoad(mine, dishes)?.load;
    let now: Session | null = null;
    const close = (s: Session): void => {
      sessions.push({ station: s.station, pan, heatOnAt: minutes(s.from), readyAt: minutes(s.ready), heatOffAt: minutes(s.off) });
    };
    for (const b of mine) {
      const ready = b.dropAt - margin;
      const pause: OilPause | null = now === null || load === undefined || b.dropAt - now.off <= decide ? null : pauseOf(event, load, b, now.off, margin);
      const from: number = pause === null ? ready - Math.ceil(heatUpMinutes.value - 1e-9) : pause.lightAt;
      if (now === null || (b.dropAt - now.off > gap && from > now.off)) {
        if (now !== null) close(now);
        if (pause !== null) pauses.push({ ...pause, decision: 'off' });
        now = { station: b.station, from, ready, off: b.panFreeAt };
      } else {
        if (pause !== null) pauses.push(pause);
        now.off = Math.max(now.off, b.panFreeAt);
      }
    }
    if (now !== null) close(now);
  }
  return { sessions, pauses };
}

/** A pause before a batch, with the heat low; the same figures serve the other decision. Cooled counts the whole pause: heating again then starts early enough. */
function pauseOf(event: Event, load: SizedLoad, b: Batch, off: number, margin: number): OilPause {
  const length = computed('minutes', { word: 'frying.term.pause' }, b.dropAt - off, 'min', 'frying.method.schedule');
  const cooledC = cooledAfter(event, load, length);
  const reheatMinutes = heatUpFrom(event, load, { key: 'cold', label: { word: 'frying.term.cooledC' }, value: cooledC.value, unit: 'degC', figure: cooledC });
  const lowKwh = keepingHot(event, load, length);
  const offKwh = heatingAgain(event, load, reheatMinutes);
  return {
    station: b.station, pan: b.pan, from: minutes(off), to: minutes(b.dropAt), decision: 'low', lightAt: minutes(b.dropAt - margin - Math.ceil(reheatMinutes.value - 1e-9)),
    cooledC, reheatMinutes, lowKwh, offKwh, lowKg: gasFor(event, load, lowKwh), offKg: gasFor(event, load, offKwh),
  };
}
