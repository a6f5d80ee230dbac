import { describe, expect, it } from 'vitest';
import { recompute } from '../../../shared/figure';
import { fry, fryEvent, figuresIn, workingFaults, wordFaults, roundPan, gasRing } from './fry-event';

/** Ten people at each of these minutes, gone soon after. */
const wavesAt = (...from: readonly number[]) => ({ guests: { waves: from.map((at, i) => ({ id: `w${i}`, name: `W${i}`, from: at, to: at + 10, counts: { adult: 10 }, stay: { shortest: 20, usual: 25, longest: 30 } })) } });

/** One pan whose oil is used up during the day, and perhaps others. */
const usedUp = (pans: readonly Record<string, unknown>[], litres = 1.2) => fryEvent({
  adults: 120, pans: [{ ...roundPan, oilLitres: litres }, ...pans], frying: { holdMinutes: 60, oilUptakeKgPerKg: 0.02 },
  burners: [{ ...gasRing, ratedW: 9000 }, { ...gasRing, id: 'ring-2' }], stations: [{ id: 'fry-1', name: 'Fry line', pans: ['pan-1'], dishes: ['fritters'] }],
});

describe('a pause of the oil', () => {
  const long = fry(fryEvent({ more: wavesAt(720, 960) })).frying;
  const middling = fry(fryEvent({ more: wavesAt(720, 775) })).frying;

  it('of hours: heat off, lit again in time, and the oil ready the settled five minutes before the batch', () => {
    const [pause] = long.pauses;
    expect(long.pauses).toHaveLength(1);
    expect(pause?.decision).toBe('off');
    expect(long.sessions.map((s) => Number(s.heatOnAt))[1]).toBe(Number(pause!.lightAt));
    expect(pause!.to - pause!.lightAt).toBe(5 + Math.ceil(pause!.reheatMinutes.value));
    expect(pause!.offKwh.value).toBeLessThan(pause!.lowKwh.value);
  });
  it('of half an hour: heat low and one session, so that somebody stays beside it', () => {
    expect(middling.pauses.map((p) => p.decision)).toEqual(['low']);
    expect(middling.pauses[0]!.to - middling.pauses[0]!.from).toBeGreaterThan(15);
    expect(middling.sessions).toHaveLength(1);
  });
  it('is told of every gap above a quarter of an hour and of no other', () => {
    for (const { batches, pauses } of [long, middling]) {
      const gaps = batches.slice(1).map((b, i) => b.dropAt - batches[i]!.panFreeAt).filter((g) => g > 15);
      expect(pauses.map((p) => p.to - p.from)).toEqual(gaps);
    }
  });
  it('cools the oil by hand: 3 L and pan 7.5 kJ/K, 1.6 W/K, from 177 °C in a kitchen of 21 °C', () => {
    const [pause] = long.pauses;
    const load = figuresIn(pause!.cooledC).find((f) => f.working().rule === 'fry.heatCapacity')!;
    const minutes = pause!.to - pause!.from;
    expect(load.value).toBeCloseTo(2.76 * 2.393 + 1.8 * 0.49, 1);
    expect(pause!.cooledC.value).toBeCloseTo(21 + 156 * Math.exp((-1.6 * minutes * 60) / (load.value * 1000)), 6);
  });
  it('on low takes the loss to the room over the share that reaches the pan: 1.6 W/K × 156 K ÷ 0.4', () => {
    const [pause] = long.pauses;
    expect(pause!.lowKwh.value).toBeCloseTo((((1.6 * 156) / 0.4) * ((pause!.to - pause!.from) / 60)) / 1000, 9);
    expect(pause!.offKwh.value).toBeCloseTo((5 * pause!.reheatMinutes.value) / 60, 9);
  });
  it('takes bottled gas by its heat: 12.86 kWh in a kilogram; current and mains gas are told in kWh alone', () => {
    const bottled = fry(fryEvent({ burners: [{ ...gasRing, kind: 'lpg' }], more: wavesAt(720, 960) })).frying.pauses[0]!;
    expect(bottled.lowKg!.value).toBeCloseTo((bottled.lowKwh.value * 3.6) / 46.3, 12);
    expect(bottled.offKg!.value).toBeCloseTo(bottled.offKwh.value / 12.861, 4);
    expect(figuresIn(bottled).flatMap((f) => [...workingFaults(f), ...wordFaults(f)])).toEqual([]);
    expect([long.pauses[0]!.lowKg, long.pauses[0]!.offKg]).toEqual([null, null]);
    const numbered = fry(fryEvent({ burners: [{ ...gasRing, cylinder: 'red' }], kitchen: { cylinders: [{ id: 'red', name: 'Red', gasKg: 11, place: 'outdoor' }] }, more: wavesAt(720, 960) })).frying.pauses[0]!;
    expect(numbered.offKg!.value).toBeGreaterThan(0);
  });
  it('shows figures that recompute, with words', () => {
    const all = [long, middling].flatMap((f) => figuresIn([f.pauses, f.oilEnds, f.waits, f.batchBound]));
    expect(all.length).toBeGreaterThan(30);
    expect(all.flatMap(workingFaults)).toEqual([]);
    expect(all.flatMap(wordFaults)).toEqual([]);
  });
});

describe('the temperature of the oil', () => {
  const { frying } = fry(fryEvent());
  const [end] = frying.oilEnds;
  const at = (minute: number): number => end!.curve.celsius[minute - end!.curve.fromMinute]!;

  it('is at frying heat when it is said to be ready, and at every put in', () => {
    expect(at(frying.sessions[0]!.readyAt)).toBeCloseTo(177, 0);
    for (const b of frying.batches) expect(at(b.dropAt - 1)).toBeGreaterThan(170);
  });
  it('falls with the fullest batch as far as its figure says, within a degree and a half', () => {
    const full = frying.batches.find((b) => b.pieces === frying.loads[0]!.pieces.value)!;
    const before = at(full.dropAt - 1);
    const low = Math.min(...end!.curve.celsius.slice(full.dropAt - end!.curve.fromMinute, full.liftAt - end!.curve.fromMinute));
    expect(Math.abs(before - low - frying.loads[0]!.dipC.value)).toBeLessThan(1.5);
  });
  it('never goes above frying heat, and falls all the time once the heat is off', () => {
    expect(Math.max(...end!.curve.celsius)).toBeLessThanOrEqual(177.01);
    const after = end!.curve.celsius.slice(frying.sessions.at(-1)!.heatOffAt - end!.curve.fromMinute + 1);
    expect(after).toHaveLength(59);
    expect(after.every((c, i) => i === 0 || c < after[i - 1]!)).toBe(true);
  });
});

describe('what becomes of the oil', () => {
  it('is the fill and the top-ups less what the food took', () => {
    const { frying } = fry(fryEvent());
    const [oil, end] = [frying.oil[0]!, frying.oilEnds[0]!];
    expect(end.leftLitres.value).toBeCloseTo(3 + oil.topUps.reduce((sum, t) => sum + t.litres, 0) - oil.uptakeLitres.value, 9);
    expect(end.movableAt - frying.sessions.at(-1)!.heatOffAt).toBeGreaterThanOrEqual(12 * 60);
  });
  it('one fill does for three kilograms of batter a litre; more than that asks for fresh oil, which is bought', () => {
    const few = fry(fryEvent()).frying;
    expect(few.oilEnds[0]!.batterPerLitre.value).toBeLessThan(3);
    expect(few.oilEnds[0]!.changeAfter).toEqual([]);
    const small = { ...roundPan, oilLitres: 1.2 };
    const many = fry(fryEvent({ adults: 120, pans: [small], frying: { holdMinutes: 60, oilUptakeKgPerKg: 0.02 }, burners: [{ ...gasRing, ratedW: 9000 }] })).frying;
    const changes = many.oilEnds[0]!.changeAfter;
    expect(changes.length).toBeGreaterThan(0);
    expect(many.buyLitres.value).toBeCloseTo(1.2 * (1 + changes.length) + many.uptakeLitres.value * 1.1, 9);
    expect(recompute(many.buyLitres.working())).toBeCloseTo(many.buyLitres.value, 9);
    // Between two changes no more than three kilograms for each litre poured, but for the batch that goes over.
    const kg = (from: number, to: number): number => many.batches.filter((b) => b.number > from && b.number < to).reduce((sum, b) => sum + b.pieces * 0.025, 0);
    const poured = (from: number, to: number): number => 1.2 + many.oil[0]!.topUps.filter((t) => t.afterBatch > from && t.afterBatch < to).reduce((sum, t) => sum + t.litres, 0);
    changes.forEach((c, i) => expect(kg(changes[i - 1] ?? 0, c)).toBeLessThanOrEqual(3 * poured(changes[i - 1] ?? 0, c) + 1e-9));
  });
  it('a change of oil that has no time is told: with the fill that lasts the day, or with the minute the second pan is lit', () => {
    const one = fry(usedUp([])).frying;
    expect(one.oilEnds[0]!.changeAfter).not.toEqual([]);
    const told = one.problems.filter((p) => p.id === 'frying.problem.oilChange');
    expect(told).toHaveLength(one.oilEnds[0]!.changeAfter.length);
    const { params } = told[0]! as { params: { litres: number; after: number; at: number; free: number; heat: number } };
    expect(params.at - params.free).toBeLessThan(params.heat);
    // That fill is enough; with what there is, it is not.
    expect(fry(usedUp([], params.litres)).frying.oilEnds[0]!.changeAfter).toEqual([]);
    const spare = fry(usedUp([{ ...roundPan, id: 'pan-2', name: 'Second pan', burner: 'ring-2' }])).frying;
    expect(spare.problems.map((p) => p.id)).toContain('frying.problem.oilChangeSpare');
    expect(spare.problems.map((p) => p.id)).not.toContain('frying.problem.oilChange');
  });
});
