import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { changeDish } from '../../../shared/edit';
import type { Event } from '../../../shared/event';
import { fryOffers, offerSaves, servesAll } from '../../../shared/frying';
import { recompute } from '../../../shared/figure';
import { fry, fryEvent, gasRing, roundPan } from './fry-event';

const sum = (xs: readonly number[]): number => xs.reduce((a, b) => a + b, 0);
const care = (second: Record<string, unknown>): string[] => fry(fryEvent({ adults: 30, second })).frying.care.map((m) => m.id);
const unmet = (changed: Event): number => sum(fry(changed).frying.served.flatMap((s) => s.unmet));
const twoPans = { pans: [roundPan, { ...roundPan, id: 'pan-2', burner: 'ring-2' }], burners: [gasRing, { ...gasRing, id: 'ring-2' }] };
const change = (event: Event, moreBatches: number): Event => {
  const answer = changeDish(event, 'fritters', { fryFresh: { moreBatches } });
  if (!('event' in answer)) throw new Error('the edit was refused');
  return answer.event;
};

describe('two dishes in one pan', () => {
  it('have the settled minutes between them, whatever the crowd', () => {
    fc.assert(fc.property(fc.integer({ min: 5, max: 80 }), fc.integer({ min: 2, max: 8 }), (adults, own) => {
      const { frying } = fry(fryEvent({ adults, second: { fryMinutes: 3 }, more: { houseFigures: [{ figure: 'fry.changeOver', value: own, why: 'a wide sieve' }] } }));
      frying.batches.slice(1).forEach((b, i) => {
        const before = frying.batches[i]!;
        expect(b.dropAt - before.panFreeAt).toBeGreaterThanOrEqual(b.dish === before.dish ? 0 : own);
      });
    }), { numRuns: 25 });
  });
  it('crumbs, taste and allergens are told where a dish follows one that leaves them', () => {
    expect(care({})).toEqual([]);
    expect(care({ crumbly: true })).toEqual(['frying.care.crumbs']);
    expect(care({ strongFlavour: true })).toEqual(['frying.care.taste']);
  });
  it('in pans of their own share no oil, and nothing is told', () => {
    const stations = [{ id: 'a', name: 'A', pans: ['pan-1'], dishes: ['fritters'] }, { id: 'b', name: 'B', pans: ['pan-2'], dishes: ['second'] }];
    expect(fry(fryEvent({ ...twoPans, stations, second: { crumbly: true, strongFlavour: true } })).frying.care).toEqual([]);
  });
  it('are bounded by each alone; one dish is the best there is', () => {
    const alone = fry(fryEvent()).frying;
    expect(alone.batchBound.value).toBe(alone.batchCount.value);
    const both = fry(fryEvent({ adults: 60, second: { fryMinutes: 6 } })).frying;
    expect(both.batchBound.value).toBeLessThanOrEqual(both.batchCount.value);
    expect(both.batchBound.value).toBeGreaterThan(alone.batchBound.value / 2);
  });
  it('the clean one comes first in line, then crumbs, then what has taste', () => {
    const served = fry(fryEvent({ frying: { strongFlavour: true }, second: { crumbly: true } })).frying.served.map((s) => s.dish);
    expect(served).toEqual(['second', 'fritters']);
  });
});

describe('a fresher plan', () => {
  const event = fryEvent({ adults: 60, stations: [{ id: 'fry-1', name: 'Fry line', pans: ['pan-1'], dishes: ['fritters'] }] });
  const now = fry(event).frying;

  it('is offered with what it really saves: the plan after the choice waits just as long as was said', () => {
    const offers = fryOffers(event);
    expect(offers.map((o) => o.more)).toContain(1);
    for (const offer of offers) {
      const then = fry(change(event, offer.more)).frying;
      expect(then.batchCount.value).toBe(offer.batches);
      expect(then.waits[0]!.minutes.value).toBe(sum(offer.waits));
      expect(now.waits[0]!.minutes.value - then.waits[0]!.minutes.value).toBe(offerSaves(offer).value);
      expect(recompute(offerSaves(offer).working())).toBe(offerSaves(offer).value);
      expect(Math.min(...then.batches.map((b) => b.pieces))).toBe(offer.smallest);
      expect(sum(then.served.flatMap((s) => s.unmet))).toBe(0);
    }
  });
  it('has as many batches as the fewest and the more that were asked for, and serves the same people', () => {
    for (const more of [0, 1, 2]) {
      const then = fry(change(event, more)).frying;
      expect(then.batchCount.value).toBe(now.batchCount.value + more);
      expect(then.pieces.value).toBe(now.pieces.value);
      expect(then.waits[0]!.minutes.value).toBeLessThanOrEqual(now.waits[0]!.minutes.value * 1.02);
      expect(then.batches.every((b) => b.eatenFrom >= b.liftAt + 5 && b.eatenTo <= b.eatBy)).toBe(true);
    }
  });
  it('is not offered again once chosen, and nothing is offered where nothing is fried', () => {
    expect(fryOffers(change(event, 1)).map((o) => o.more)).not.toContain(1);
    expect(fryOffers(fryEvent({ adults: 0 }))).toEqual([]);
  });
});

describe('remedies of a shortage', () => {
  const event = fryEvent({ adults: 150 });
  const { frying } = fry(event);
  const remedy = (id: string) => frying.shortages[0]?.remedies.find((r) => r.id === id);
  const takeUp = (share: number): Event => ({ ...event, menu: { ...event.menu, dishes: event.menu.dishes.map((d) => ({ ...d, takeUp: share })) } });

  it('there is a shortage to mend', () => expect(unmet(event)).toBeGreaterThan(0));
  it('another pan on its own burner serves everybody', () => {
    expect(remedy('frying.shortage.pans')).toMatchObject({ params: { pans: 1 } });
    expect(unmet(fryEvent({ ...twoPans, adults: 150 }))).toBe(0);
  });
  it('fewer who take it: with the share named all are served, with five hundredths more they are not', () => {
    const found = remedy('frying.shortage.takeUp');
    if (found?.id !== 'frying.shortage.takeUp') throw new Error('none found');
    expect(unmet(takeUp(found.params.percent / 100))).toBe(0);
    expect(unmet(takeUp((found.params.percent + 5) / 100))).toBeGreaterThan(0);
  });
  it('a longer hold, where it is enough, is the shortest of its steps', () => {
    const found = remedy('frying.shortage.hold');
    const hold = found?.id === 'frying.shortage.hold' ? found.params.minutes : null;
    for (const minutes of [25, 30, 35, 40]) {
      const enough = unmet(fryEvent({ adults: 150, frying: { holdMinutes: minutes } })) === 0;
      expect(enough).toBe(hold !== null && minutes >= hold);
    }
  });
  it('guests who wait: the minutes named are enough, one less is not, and a walk of full loads needs no fewer', () => {
    const found = remedy('frying.shortage.wait');
    if (found?.id !== 'frying.shortage.wait') throw new Error('none found');
    const dish = fry(event).menu.dishes[0]!;
    const wanted = dish.demand.values.flatMap((n, i) => Array.from({ length: n }, () => dish.demand.fromMinute + i));
    const { pieces, cycleMinutes, fryMinutes } = frying.loads[0]!;
    // One pan worked without a stop, every batch as late as the waiting allows and never later than the next: full loads from the back.
    const feasible = (wait: number): boolean => {
      let next = Infinity;
      for (let end = wanted.length; end > 0; end -= pieces.value) {
        const first = Math.max(0, end - pieces.value);
        const drop = Math.min(wanted[first]! + wait - fryMinutes, next - cycleMinutes.value);
        if (drop + fryMinutes + 20 < wanted[end - 1]!) return false;
        next = drop;
      }
      return true;
    };
    expect(found.params.minutes).toBeGreaterThan(0);
    // Full loads from the back are one way to do it, so what they can do the planner can; it may do better with part loads.
    const walk = Array.from({ length: 61 }, (_, w) => w).find(feasible);
    expect(found.params.minutes).toBeLessThanOrEqual(walk ?? 60);
    const waiting = (minutes: number): boolean => servesAll({
      wanted, load: pieces.value, fry: fryMinutes, cycle: cycleMinutes.value, hold: 20, lead: -minutes, earliest: -Infinity, pans: 1, free: () => 1,
    });
    expect([waiting(found.params.minutes - 1), waiting(found.params.minutes)]).toEqual([false, true]);
  });
});
