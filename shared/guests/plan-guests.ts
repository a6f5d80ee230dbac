import { adultBands, childBands, type BandId, type Counts, type Event } from '../event';
import { minutes } from '../measure';
import { expectedFigure, expectedTotalFigure, invitedFigure, plannedFigure } from './figure-people';
import { peakFigure } from './figure-stay';
import { everybody, invitedCounts, peopleIn } from './headcount';
import { presencePercentiles } from './percentiles';
import { plannedOf, reserveOf } from './planned';
import { flows, gridOf, presentSeries } from './presence';
import { meanStay } from './stay';
import { turnoutOf } from './turnout';
import type { GuestsPlan, WavePlan } from './types';

const scaled = (counts: Counts, share: number): Record<BandId, number> => {
  const of = (band: BandId): number => counts[band] * share;
  return {
    under1: of('under1'), age1to3: of('age1to3'), age4to6: of('age4to6'), age7to9: of('age7to9'),
    age10to12: of('age10to12'), age13to17: of('age13to17'), adult: of('adult'), olderAdult: of('olderAdult'),
  };
};

/**
 * Who comes, when, and how many are there in each minute. Arrivals are even over a wave's window, stays triangular, so that the expected
 * numbers are closed forms; percentiles come from distributions in which families come together (see `familySizes`).
 * Adding a guest to a wave never lowers any series or figure. A headcount set as a whole is split by Webster's method, so that no wave loses
 * anybody when the total rises by one.
 */
export function planGuests(event: Event): GuestsPlan {
  const invited = invitedCounts(event);
  const parts = event.guests.waves.map((wave, i) => {
    const counts = invited[i] ?? wave.counts;
    const turnout = turnoutOf(wave, everybody(wave.counts), everybody(counts));
    const path = `guests.waves[${i}]`;
    return { wave, counts, turnout, path, coming: { from: wave.from, to: wave.to, stay: wave.stay }, expected: expectedFigure(event, i, turnout, counts) };
  });
  const reserve = reserveOf(parts, event.preferences.cover);
  const planned = plannedOf(parts.map((p) => p.turnout), reserve);
  const waves: WavePlan[] = parts.map(({ wave, counts, turnout, expected: coming }, i) => {
    const people = turnout.invited;
    return {
      id: wave.id, name: wave.name, from: minutes(wave.from), to: minutes(wave.to), counts,
      adults: peopleIn(counts, adultBands), children: peopleIn(counts, childBands),
      expected: scaled(counts, turnout.share),
      planned: scaled(counts, people > 0 ? (planned[i] ?? 0) / people : 0),
      coming, turnout,
      stay: { shortest: wave.stay.shortest, usual: wave.stay.usual, longest: wave.stay.longest, mean: meanStay(wave.stay) },
    };
  });

  const { fromMinute, length } = gridOf(event);
  const coming = parts.map((p) => ({ coming: p.coming, people: p.turnout.expected }));
  const expected = presentSeries(coming, fromMinute, length);
  const planning = presentSeries(parts.map((p, i) => ({ coming: p.coming, people: planned[i] ?? 0 })), fromMinute, length);
  const { p10, p90 } = presencePercentiles(parts, fromMinute, expected);
  const { arrivals, departures } = flows(coming, fromMinute, length);

  let at = 0;
  for (let i = 1; i < length; i += 1) if ((expected[i] ?? 0) > (expected[at] ?? 0) + 1e-9) at = i;
  const peakAt = minutes(fromMinute + at);
  const total = expectedTotalFigure(event, parts.map((p) => p.expected));
  const [adults, children] = [invitedFigure(event, 'adults', parts.map((p) => p.counts)), invitedFigure(event, 'children', parts.map((p) => p.counts))];
  return {
    adults,
    children,
    planned: plannedFigure(event, reserve, total, [adults, children]),
    waves,
    presence: { fromMinute, expected, p10, p90, planning },
    arrivals: { fromMinute, values: arrivals },
    departures: { fromMinute, values: departures },
    peak: peakFigure(expected[at] ?? 0, peakAt, parts.map((p) => ({ name: p.wave.name, path: p.path, coming: p.coming, expected: p.expected }))),
    peakAt,
  };
}
