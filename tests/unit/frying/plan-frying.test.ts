import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Event } from '../../../shared/event';
import { fryingNeeds, type FryingPlan } from '../../../shared/frying';
import { figuresIn, fry, fryEvent, gasRing, roundPan, wordFaults, workingFaults } from './fry-event';

const sum = (xs: readonly number[]) => xs.reduce((a, b) => a + b, 0);

/** Every promise of the room, checked from the plan alone. */
function promises(event: Event, { frying, menu }: ReturnType<typeof fry>): string[] {
  const faults: string[] = [];
  frying.batches.forEach((b, i) => {
    if (b.number !== i + 1) faults.push('batch numbers are not in order of put-in');
    for (const other of frying.batches.slice(i + 1)) if (other.pan === b.pan && other.dropAt < b.panFreeAt) faults.push(`pan ${b.pan} in batches ${b.number} and ${other.number}`);
    const load = frying.loads.find((l) => l.pan === b.pan && l.dish === b.dish);
    if (b.pieces < 1 || b.pieces > (load?.pieces.value ?? 0)) faults.push(`batch ${b.number} has ${b.pieces} pieces`);
    if (b.eatenFrom < b.liftAt || b.eatenTo > b.eatBy) faults.push(`batch ${b.number} eaten ${b.eatenFrom}-${b.eatenTo}`);
    const session = frying.sessions.find((s) => s.pan === b.pan && s.readyAt <= b.dropAt && b.panFreeAt <= s.heatOffAt);
    if (session === undefined) faults.push(`batch ${b.number} without hot oil`);
  });
  for (const s of frying.served) {
    const dish = menu.dishes.find((d) => d.id === s.dish)!;
    if (s.fromMinute !== dish.demand.fromMinute || s.portions.length !== dish.demand.values.length) faults.push('served and demand are not aligned');
    s.portions.forEach((p, i) => { if (p < 0 || s.unmet[i]! < 0 || p + s.unmet[i]! !== dish.demand.values[i]) faults.push(`minute ${i} does not add up`); });
    if (sum(frying.batches.filter((b) => b.dish === s.dish).map((b) => b.pieces)) !== sum(s.portions)) faults.push('pieces fried are not the pieces served');
  }
  faults.push(...bowlFaults(event, frying));
  return faults;
}

function bowlFaults(event: Event, frying: FryingPlan): string[] {
  const faults: string[] = [];
  const left = new Map(frying.bowls.map((b) => [b.number, b.pieces]));
  for (const b of frying.batches) {
    const life = event.recipes.find((r) => r.id === b.dish)?.frying?.bowlMinutes;
    if (life === null) { if (b.bowls.length > 0) faults.push('a bowl for what has no batter'); continue; }
    let want = b.pieces;
    for (const n of b.bowls) {
      const bowl = frying.bowls.find((x) => x.number === n)!;
      if (b.dropAt < bowl.readyAt || b.dropAt > bowl.useBy) faults.push(`batch ${b.number} outside bowl ${n}`);
      const take = Math.min(want, left.get(n)!);
      left.set(n, left.get(n)! - take);
      want -= take;
    }
    if (want > 0) faults.push(`batch ${b.number} lacks batter for ${want}`);
  }
  if ([...left.values()].some((n) => n !== 0)) faults.push('batter nobody fries');
  return faults;
}

const twoPans = { pans: [roundPan, { ...roundPan, id: 'pan-2', burner: 'ring-2' }], burners: [gasRing, { ...gasRing, id: 'ring-2' }] };
const changes = fc.record({
  adults: fc.integer({ min: 0, max: 160 }), lead: fc.integer({ min: 0, max: 12 }), hold: fc.integer({ min: 1, max: 40 }), bowl: fc.option(fc.integer({ min: 1, max: 40 })),
  fryMinutes: fc.double({ min: 0.5, max: 9, noNaN: true }), two: fc.boolean(), second: fc.boolean(), bowlLitres: fc.integer({ min: 1, max: 12 }), watts: fc.integer({ min: 800, max: 9000 }), oil: fc.double({ min: 1, max: 5, noNaN: true }),
}).map((c) => fryEvent({
  ...(c.two ? twoPans : { pans: [{ ...roundPan, oilLitres: c.oil }], burners: [{ ...gasRing, ratedW: c.watts }] }), adults: c.adults,
  frying: { holdMinutes: c.hold, bowlMinutes: c.bowl, fryMinutes: c.fryMinutes }, ...(c.second ? { second: { crumbly: true, fryMinutes: 3 } } : {}),
  kitchen: { bowlLitres: c.bowlLitres }, more: { preferences: { fryLeadMinutes: c.lead } },
}));

describe('the plan of frying', () => {
  it('keeps its promises whatever the event', () => {
    fc.assert(fc.property(changes, (event) => {
      expect(promises(event, fry(event))).toEqual([]);
    }), { numRuns: 80 });
  });
  it('is the same every time', () => {
    const event = fryEvent({ ...twoPans, second: {} });
    expect(JSON.stringify(fry(event).frying)).toBe(JSON.stringify(fry(event).frying));
  });
  it('shows figures that recompute from named inputs by registered rules with words', () => {
    fc.assert(fc.property(changes, (event) => {
      const all = figuresIn(fry(event).frying);
      expect(all.length).toBeGreaterThan(5);
      expect(all.flatMap(workingFaults)).toEqual([]);
      expect(all.flatMap(wordFaults)).toEqual([]);
    }), { numRuns: 15 });
  });
});

describe('what goes in at once', () => {
  it('is the worked case of the reference: 33 fit, 29 by cover, 24 by the fall of the oil on a 5 kW ring', () => {
    const load = fry(fryEvent({ frying: { batterC: 20 } })).frying.loads[0]!;
    expect(load.limits.space.value).toBe(29);
    expect(load.pieces.value).toBe(24);
    expect(load.limitedBy).toBe('dip');
    expect(load.cycleMinutes.value).toBe(5);
    expect(load.kgPerHour.value).toBeCloseTo(7.2, 6);
    expect(load.dipC.value).toBeLessThanOrEqual(15);
  });
  it('takes 19 on a 3.5 kW ring', () => {
    expect(fry(fryEvent({ frying: { batterC: 20 }, burners: [{ ...gasRing, ratedW: 3500 }] })).frying.loads[0]!.pieces.value).toBe(19);
  });
  it('is limited by space on a strong burner and by the rim in a pan filled high', () => {
    expect(fry(fryEvent({ burners: [{ ...gasRing, kind: 'outdoorGas', ratedW: 16000 }] })).frying.loads[0]!.limitedBy).toBe('space');
    expect(fry(fryEvent({ pans: [{ ...roundPan, oilLitres: 4.2 }] })).frying.loads[0]!.limitedBy).toBe('rim');
  });
  it('says what would let more in, and that change does', () => {
    const { remedy, pieces } = fry(fryEvent()).frying.loads[0]!;
    expect(remedy).not.toBeNull();
    if (remedy?.id !== 'frying.remedy.burner' && remedy?.id !== 'frying.remedy.moreOil') throw new Error(`unexpected ${remedy?.id}`);
    const better = remedy.id === 'frying.remedy.burner' ? { burners: [{ ...gasRing, ratedW: 6000 }] } : { pans: [{ ...roundPan, oilLitres: 3.5 }] };
    expect(fry(fryEvent(better)).frying.loads[0]!.pieces.value).toBe(remedy.params.pieces);
    expect(remedy.params.pieces).toBeGreaterThan(pieces.value);
  });
  it('says last what another pan on its own burner would fry in an hour, and that is what the two fry', () => {
    const told = fry(fryEvent()).frying.loads[0]!.remedies.at(-1);
    const two = fry(fryEvent({ pans: [roundPan, { ...roundPan, id: 'pan-2', burner: 'ring-2' }], burners: [gasRing, { ...gasRing, id: 'ring-2' }] })).frying.loads;
    expect(told).toEqual({ id: 'frying.remedy.secondPan', params: { kg: two.reduce((sum, l) => sum + l.kgPerHour.value, 0), now: fry(fryEvent()).frying.loads[0]!.kgPerHour.value } });
    // Under two pans that share a burner, the third on its own gives more than half of what they fry together.
    const shared = fry(fryEvent({ pans: [roundPan, { ...roundPan, id: 'pan-2' }] })).frying.loads[0]!.remedies.at(-1);
    expect(shared?.id === 'frying.remedy.secondPan' && shared.params.kg).toBeGreaterThan(7.2);
  });
  it('halves the heat of a burner under two pans', () => {
    const shared = fry(fryEvent({ pans: [roundPan, { ...roundPan, id: 'pan-2' }] })).frying.loads[0]!;
    expect(shared.limits.heat.value).toBeLessThan(fry(fryEvent()).frying.loads[0]!.limits.heat.value / 2);
  });
  it('takes longer from put-in to put-in when even one piece asks too much of the burner', () => {
    const load = fry(fryEvent({ frying: { pieceBatterG: 200, fryMinutes: 1, handlingMinutes: 0 }, burners: [{ ...gasRing, ratedW: 1100 }] })).frying.loads[0]!;
    expect(load.pieces.value).toBe(1);
    expect(load.cycleMinutes.value).toBeGreaterThan(1);
  });
});

describe('when not everybody can be served', () => {
  const event = fryEvent({ adults: 400 });
  const { frying } = fry(event);
  it('names the stretch, and remedies that work', () => {
    expect(frying.shortages.length).toBeGreaterThan(0);
    for (const s of frying.shortages) {
      expect(s.unmet).toBeGreaterThan(0);
      expect(s.unmet).toBeLessThanOrEqual(s.wanted);
      expect(s.from).toBeLessThanOrEqual(s.to);
    }
    expect(sum(frying.shortages.map((s) => s.unmet))).toBe(sum(frying.served.flatMap((s) => s.unmet)));
    const pans = frying.shortages[0]!.remedies.find((r) => r.id === 'frying.shortage.pans');
    expect(pans).toBeDefined();
    const count = pans?.id === 'frying.shortage.pans' ? pans.params.pans : 0;
    const more = Array.from({ length: count }, (_, i) => i + 2);
    const again = fry(fryEvent({
      adults: 400, pans: [roundPan, ...more.map((n) => ({ ...roundPan, id: `pan-${n}`, burner: `ring-${n}` }))], burners: [gasRing, ...more.map((n) => ({ ...gasRing, id: `ring-${n}` }))],
    }));
    expect(again.frying.shortages).toEqual([]);
  });
  it('says so when no station fries a dish, and leaves its whole demand unmet', () => {
    const none = fry(fryEvent({ stations: [] }));
    expect(none.frying.problems.map((p) => p.id)).toEqual(['frying.problem.noStation']);
    expect(none.frying.batches).toEqual([]);
    expect(sum(none.frying.served[0]!.unmet)).toBe(none.menu.dishes[0]!.portions.value);
  });
  it('says so when the burner cannot keep the oil hot', () => {
    expect(fry(fryEvent({ burners: [{ ...gasRing, ratedW: 300 }] })).frying.problems.map((p) => p.id)).toEqual(['frying.problem.noHeat']);
  });
});

describe('several dishes and pans', () => {
  it('fries the clean dish first in line and the crumbly one around it', () => {
    const { frying } = fry(fryEvent({ adults: 30, frying: { crumbly: true }, second: {} }));
    expect(frying.served.map((s) => s.dish)).toEqual(['second', 'fritters']);
    expect(new Set(frying.batches.map((b) => b.dish))).toEqual(new Set(['second', 'fritters']));
  });
  it('shares the demand over unequal pans by what they fry', () => {
    const small = { id: 'pan-2', name: 'Small', shape: 'straight', rimMm: 240, depthMm: 150, oilLitres: 2, burner: 'ring-2' };
    const { frying } = fry(fryEvent({ adults: 90, pans: [roundPan, small], burners: [gasRing, { ...gasRing, id: 'ring-2', ratedW: 2500 }] }));
    const pieces = (pan: string) => sum(frying.batches.filter((b) => b.pan === pan).map((b) => b.pieces));
    expect(pieces('pan-1')).toBeGreaterThan(pieces('pan-2'));
    expect(pieces('pan-2')).toBeGreaterThan(0);
  });
  it('turns the heat off over a long gap and on again', () => {
    const waves = [720, 960].map((from, i) => ({ id: `w${i}`, name: `W${i}`, from, to: from + 10, counts: { adult: 10 }, stay: { shortest: 20, usual: 25, longest: 30 } }));
    const { frying } = fry(fryEvent({ more: { guests: { waves } } }));
    expect(frying.sessions).toHaveLength(2);
    expect(frying.sessions[0]!.heatOffAt).toBeLessThan(frying.sessions[1]!.heatOnAt);
    expect(new Set(frying.batches.map((b) => b.wave))).toEqual(new Set(['w0', 'w1']));
  });
});

describe('oil', () => {
  it('buys the fills, what the food takes and a tenth of that for drips', () => {
    const event = fryEvent();
    const { frying } = fry(event);
    const batter = sum(frying.batches.map((b) => b.pieces)) * 0.025;
    expect(frying.uptakeLitres.value).toBeCloseTo((batter * 0.14) / 0.92, 9);
    expect(frying.buyLitres.value).toBeCloseTo(3 + ((batter * 0.14) / 0.92) * 1.1, 9);
    expect(sum(frying.oil.flatMap((o) => o.topUps.map((t) => t.litres)))).toBeLessThanOrEqual(frying.uptakeLitres.value + 1e-9);
    const [need] = fryingNeeds(event, frying);
    expect(need?.ingredient).toBe('sunflower-oil');
    expect(need?.origin).toBe('frying-oil');
    expect(need!.amount.amount.toNumber()).toBeGreaterThanOrEqual(frying.buyLitres.value);
    expect(need!.amount.amount.toNumber()).toBeLessThan(frying.buyLitres.value + 0.0011);
  });
  it('buys the oil that the event names, and none when nothing is fried', () => {
    const peanut = fryEvent({ kitchen: { oilKind: 'peanut-refined' } });
    expect(fryingNeeds(peanut, fry(peanut).frying)[0]?.ingredient).toBe('peanut-oil');
    expect(fryingNeeds(peanut, fry(fryEvent({ adults: 0 })).frying)).toEqual([]);
  });
  it('heats the oil in the time of the reference: 3 L on 5 kW in about 10 minutes', () => {
    expect(fry(fryEvent()).frying.oil[0]!.heatUpMinutes.value).toBeCloseTo(9.7, 1);
  });
});
