import { readFileSync } from 'node:fs';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { setHeadcount } from '../../../shared/edit';
import { bandIds, parseEvent, type Event } from '../../../shared/event';
import { recompute } from '../../../shared/figure';
import { reserveBowls } from '../../../shared/frying';
import { plan } from '../../../shared/plan';

const parsed = parseEvent(readFileSync(new URL('../../../assets/app/demo/lantern-evening.brimful', import.meta.url), 'utf8'));
if (!parsed.ok) throw new Error('the demo does not open');
const demo = parsed.event;
const edited = (made: ReturnType<typeof setHeadcount>): Event => {
  if (!('event' in made)) throw new Error('refused');
  return made.event;
};

/** The demo with open invitations: of each wave some six in ten come, between three in ten and all. */
const open: Event = { ...demo, guests: { ...demo.guests, headcount: { adults: null, children: null }, waves: demo.guests.waves.map((w) => {
  const people = bandIds.reduce((sum, band) => sum + w.counts[band], 0);
  return { ...w, turnout: { kind: 'range' as const, low: Math.floor(people * 0.3), likely: Math.floor(people * 0.6), high: people } };
}) } };

describe('reserve bowls', () => {
  const made = plan(open);
  const found = reserveBowls(made.menu.dishes, made.frying);

  it('are the last ones, as many as an average day leaves', () => {
    expect(found.length).toBeGreaterThan(0);
    for (const { dish, all, usual, numbers, share } of found) {
      const own = made.frying.bowls.filter((b) => b.dish === dish);
      const of = made.menu.dishes.find((d) => d.id === dish);
      expect([own.length, numbers.length]).toEqual([all, all - usual]);
      expect(usual).toBe(Math.ceil(all * (1 - (of?.reserve?.value ?? 0) / (of?.portions.value ?? 1)) - 1e-9));
      const last = Math.min(...own.filter((b) => numbers.includes(b.number)).map((b) => b.mixAt));
      expect(Math.max(...own.filter((b) => !numbers.includes(b.number)).map((b) => b.mixAt))).toBeLessThanOrEqual(last);
      expect(share).toBeGreaterThan(0);
      expect(share).toBeLessThan(1);
    }
  });

  it('are told on the list: of a line, what its dishes put into them', () => {
    const [first] = found;
    const flour = made.buying.lines.filter((l) => l.reserve !== undefined);
    expect(flour.length).toBeGreaterThan(2);
    for (const line of flour) {
      const expected = line.origins.reduce((sum, o) => sum + o.amount.amount.toNumber() * (found.find((r) => r.dish === o.dish)?.share ?? 0), 0);
      expect(line.reserve?.value).toBeCloseTo(expected, 9);
      expect(line.reserve?.value).toBeLessThanOrEqual(line.need.amount.toNumber());
      expect(recompute(line.reserve!.working())).toBeCloseTo(line.reserve!.value, 9);
    }
    const ofDish = made.buying.lines.filter((l) => l.origins.some((o) => o.dish === first?.dish));
    expect(ofDish.every((l) => l.reserve !== undefined)).toBe(true);
    expect(made.buying.lines.filter((l) => l.kind !== 'food' && l.reserve !== undefined)).toEqual([]);
  });

  it('there are none where everybody is sure to come', () => {
    const sure: Event = { ...demo, guests: { ...demo.guests, waves: demo.guests.waves.map((w) => ({ ...w, turnout: { kind: 'known' as const } })) } };
    const half = plan(sure);
    expect(half.menu.dishes.every((d) => d.reserve === undefined)).toBe(true);
    expect(reserveBowls(half.menu.dishes, half.frying)).toEqual([]);
    expect(half.buying.lines.some((l) => l.reserve !== undefined)).toBe(false);
  });

  it('never leave less than one bowl for an average day, whatever the headcount', () => {
    fc.assert(fc.property(fc.integer({ min: 1, max: 150 }), fc.integer({ min: 0, max: 60 }), (adults, children) => {
      const p = plan(edited(setHeadcount(open, adults, children)));
      for (const r of reserveBowls(p.menu.dishes, p.frying)) {
        expect(r.usual).toBeGreaterThanOrEqual(1);
        expect(r.usual + r.numbers.length).toBe(r.all);
      }
    }), { numRuns: 8 });
  });
});
