import type { Event } from '../event';
import { minutes, type Minutes } from '../measure';
import { arrivedChance, presentChance, windowMinutes, type Coming } from './stay';

/** First and last minute of the people's grid: all arrivals and the latest departure, and the opening hours. */
export function gridOf(event: Event): { readonly fromMinute: Minutes; readonly length: number } {
  const waves = event.guests.waves;
  const first = Math.floor(Math.min(event.opensAt, ...waves.map((w) => w.from)));
  const last = Math.ceil(Math.max(event.closesAt, ...waves.map((w) => w.from + windowMinutes(w) + w.stay.longest)));
  return { fromMinute: minutes(first), length: last - first + 1 };
}

/** A number of people of one wave. */
export interface People {
  readonly coming: Coming;
  readonly people: number;
}

/** People there at the start of each minute, expected. */
export function presentSeries(waves: readonly People[], fromMinute: number, length: number): number[] {
  const values = Array.from({ length }, () => 0);
  for (const { coming, people } of waves) {
    if (people <= 0) continue;
    const first = Math.max(0, Math.floor(coming.from - fromMinute));
    const last = Math.min(length - 1, Math.ceil(coming.from + windowMinutes(coming) + coming.stay.longest - fromMinute));
    for (let i = first; i <= last; i += 1) values[i] = (values[i] ?? 0) + people * presentChance(coming, fromMinute + i);
  }
  return values;
}

/** People arriving and leaving within each minute, expected; what came in less what went out is who is there at the end of the minute. */
export function flows(waves: readonly People[], fromMinute: number, length: number): { arrivals: number[]; departures: number[] } {
  const arrivals = Array.from({ length }, () => 0);
  const departures = Array.from({ length }, () => 0);
  for (const { coming, people } of waves) {
    if (people <= 0) continue;
    const first = Math.max(0, Math.floor(coming.from - fromMinute));
    const last = Math.min(length - 1, Math.ceil(coming.from + windowMinutes(coming) + coming.stay.longest - fromMinute));
    let arrived = arrivedChance(coming, fromMinute + first);
    let present = presentChance(coming, fromMinute + first);
    for (let i = first; i <= last; i += 1) {
      const arrivedNext = arrivedChance(coming, fromMinute + i + 1);
      const presentNext = presentChance(coming, fromMinute + i + 1);
      const coming1 = people * (arrivedNext - arrived);
      arrivals[i] = (arrivals[i] ?? 0) + coming1;
      departures[i] = (departures[i] ?? 0) + Math.max(0, coming1 - people * (presentNext - present));
      arrived = arrivedNext;
      present = presentNext;
    }
  }
  return { arrivals, departures };
}
