import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calibrate } from '../../../shared/calibration';
import { removeTrial, setTrial, takeTrial, type EditResult } from '../../../shared/edit';
import { formatsFor, serialiseEvent, trialSchema, type Event, type Trial } from '../../../shared/event';
import { recompute, type Figure } from '../../../shared/figure';
import { ruleIds } from '../../../shared/figure';
import { plan } from '../../../shared/plan';
import { sayMessage } from '../../../shared/words';
import { demo } from '../demo/demo';

const lantern = demo('lantern-evening');
const fried = lantern.menu.dishes.find((d) => lantern.recipes.find((r) => r.id === d.recipe)?.frying?.bowlMinutes !== null && lantern.recipes.find((r) => r.id === d.recipe)?.frying !== undefined);
const pan = lantern.kitchen.stations.find((s) => fried !== undefined && s.dishes.includes(fried.id))?.pans[0] ?? lantern.kitchen.pans[0]?.id ?? '';
const base: Trial = { id: 'first', dish: fried?.id ?? '', pan, pieces: 20 };
const full: Trial = { ...base, beforeG: 520, afterG: 495, minutes: 4.5, startC: 176, lowestC: 163, backMinutes: 6, topUpMl: 70 };
const told = (trial: Trial, event: Event = lantern) => Object.fromEntries(calibrate(event, trial).settings.map((s) => [s.told, s.after]));
const notes = (trial: Trial, event: Event = lantern) => calibrate(event, trial).notes.map((n) => n.id);
const done = (r: EditResult): Event => {
  if ('problem' in r) throw new Error(r.problem.id);
  return r.event;
};

const share = (t: Trial): number => told(t)['usefulShare'] ?? 0;

/** A figure and all figures it is worked out from. */
function everyFigure(f: Figure): readonly Figure[] {
  return [f, ...f.working().terms.flatMap((t) => (t.figure === undefined ? [] : everyFigure(t.figure)))];
}

describe('what one real batch tells', () => {
  it('reads weights and clock', () => {
    expect(told({ ...base, beforeG: 520 })).toEqual({ pieceBatterG: 26 }); // 520 / 20
    expect(told({ ...base, minutes: 4.5 })).toEqual({ fryMinutes: 4.5 });
    // 70 ml at 0.92 kg/l are 64.4 g of oil, 12.4 % of 520 g; 25 g lighter, 4.8 %: so 17.2 % of water went.
    expect(told({ ...base, beforeG: 520, afterG: 495, topUpMl: 70 })).toEqual({ pieceBatterG: 26, oilUptakeKgPerKg: 0.124, waterLostKgPerKg: 0.172 });
  });
  it('takes the oil of the recipe when none was measured, and says so', () => {
    expect(told({ ...base, beforeG: 520, afterG: 495 })['waterLostKgPerKg']).toBeCloseTo(25 / 520 + (lantern.recipes.find((r) => r.id === fried?.recipe)?.frying?.oilUptakeKgPerKg ?? 0), 3);
    expect(notes({ ...base, beforeG: 520, afterG: 495 })).toContain('trial.assumes.uptake');
    expect(notes(full)).not.toContain('trial.assumes.uptake');
  });
  it('shows a working that comes out at each value, with rules of the register', () => {
    for (const trial of [full, { ...full, backMinutes: undefined }, { ...full, backMinutes: undefined, lowestC: 140 }, { ...base, backMinutes: 5 }, { ...full, startC: undefined, lowestC: undefined }]) {
      const { settings, usefulW } = calibrate(lantern, trialSchema.parse(JSON.parse(JSON.stringify(trial))));
      const figures = [...settings.map((s) => s.figure), ...(usefulW === null ? [] : [usefulW])].flatMap(everyFigure);
      expect(figures.length).toBeGreaterThan(0);
      for (const f of figures) {
        const w = f.working();
        expect(w.terms.length).toBeGreaterThan(0);
        expect(ruleIds).toContain(w.rule);
        expect(Math.abs(recompute(w) - f.value)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(f.value)));
      }
    }
  });
  it('would notice a wrong power in the working of a fall', () => {
    const { usefulW } = calibrate(lantern, { ...base, beforeG: 520, minutes: 4.5, startC: 176, lowestC: 163 });
    const net = usefulW?.working().terms.find((t) => t.key === 'net')?.figure?.working();
    if (net === undefined) throw new Error('no working');
    expect(net.rule).toBe('trial.netByFall');
    const wrong = { ...net, terms: net.terms.map((t) => (t.key === 'tried' ? { ...t, value: Number(t.value) * 1.05 } : t)) };
    expect(Math.abs(recompute(wrong) / recompute(net) - 1.05)).toBeGreaterThan(0.01);
  });
  it('power falls as the oil takes longer to come back, and as it falls further', () => {
    expect(share({ ...full, backMinutes: 6 })).toBeGreaterThan(share({ ...full, backMinutes: 8 }));
    expect(share({ ...base, startC: 176, lowestC: 166 })).toBeGreaterThan(share({ ...base, startC: 176, lowestC: 160 }));
  });
});

describe('what does not fit is said and not offered', () => {
  it.each([
    ['heavier than any piece', { ...base, pieces: 2, beforeG: 900 }, 'trial.misfit.pieceBatterG', 'pieceBatterG'],
    ['more oil than pieces take', { ...base, beforeG: 500, topUpMl: 400 }, 'trial.misfit.oilUptakeKgPerKg', 'oilUptakeKgPerKg'],
    ['heavier after than before', { ...base, beforeG: 500, afterG: 620 }, 'trial.misfit.waterLostKgPerKg', 'waterLostKgPerKg'],
    ['almost nothing left', { ...base, beforeG: 500, afterG: 100 }, 'trial.misfit.waterLostKgPerKg', 'waterLostKgPerKg'],
    ['back at once', { ...full, lowestC: undefined, pieces: 200, beforeG: 5200, afterG: 4900, topUpMl: 700, backMinutes: 0.3 }, 'trial.misfit.usefulShare', 'usefulShare'],
    ['no fall', { ...base, startC: 170, lowestC: 175 }, 'trial.misfit.noFall', 'usefulShare'],
    ['more than the pieces can cool', { ...base, pieces: 2, startC: 190, lowestC: 100 }, 'trial.misfit.fall', 'usefulShare'],
  ] as const)('%s', (_name, trial, note, value) => {
    const clean = trialSchema.parse(JSON.parse(JSON.stringify(trial)));
    expect(notes(clean)).toContain(note);
    expect(told(clean)[value]).toBeUndefined();
  });
  it('a fall and a time that belong to two batches', () => {
    expect(notes({ ...full, lowestC: 174 })).toContain('trial.misfit.apart');
    expect(notes(full)).not.toContain('trial.misfit.apart');
  });
  it('a dish or pan that is gone', () => {
    expect(notes({ ...full, pan: 'nowhere' })).toEqual(['trial.gone']);
    expect(notes({ ...full, dish: 'nothing' })).toEqual(['trial.gone']);
  });
  it('what is missing', () => {
    expect(notes(base)).toEqual(['trial.needs.power', 'trial.needs.before']);
    expect(notes({ ...base, beforeG: 500, backMinutes: 6 })).toEqual(['trial.rough.drop', 'trial.needs.after']);
  });
});

describe('taking it', () => {
  const withCard = done(setTrial(lantern, full));
  it('writes recipe and burner as one step, marks the card, and is undone to the same bytes', () => {
    const before = serialiseEvent(withCard);
    const after = done(takeTrial(withCard, 'first'));
    const frying = after.recipes.find((r) => r.id === fried?.recipe)?.frying;
    const burner = after.kitchen.burners.find((b) => b.id === after.kitchen.pans.find((p) => p.id === pan)?.burner);
    expect([frying?.pieceBatterG, frying?.fryMinutes, frying?.oilUptakeKgPerKg, frying?.waterLostKgPerKg]).toEqual([26, 4.5, 0.124, 0.172]);
    expect(burner?.usefulShare).toBe(told(full)['usefulShare']);
    expect(after.trials?.[0]?.taken).toBe(true);
    expect(serialiseEvent(withCard)).toBe(before);
  });
  it('changes the plan and tells the same again', () => {
    const after = done(takeTrial(withCard, 'first'));
    expect(plan(after).frying.batchCount.value).not.toBe(plan(withCard).frying.batchCount.value);
    for (const s of calibrate(after, full).settings) expect(s.after).toBeCloseTo(s.before, 2);
  });
  it('takes only what is asked for', () => {
    const after = done(takeTrial(withCard, 'first', ['fryMinutes']));
    expect(after.kitchen).toEqual(withCard.kitchen);
    expect(after.recipes.find((r) => r.id === fried?.recipe)?.frying).toEqual({ ...withCard.recipes.find((r) => r.id === fried?.recipe)?.frying, fryMinutes: 4.5 });
  });
  it('refuses an empty card and one that is not there', () => {
    expect(takeTrial(done(setTrial(lantern, base)), 'first')).toMatchObject({ problem: { id: 'edit.trialNothing' } });
    expect(takeTrial(lantern, 'first')).toMatchObject({ problem: { id: 'edit.gone' } });
    expect(removeTrial(lantern, 'first')).toMatchObject({ problem: { id: 'edit.gone' } });
  });
  it('comes out again without a trace', () => expect(serialiseEvent(done(removeTrial(withCard, 'first')))).toBe(serialiseEvent(lantern)));
  it('refuses numbers outside their range beside the field', () => expect(setTrial(lantern, { ...full, startC: 20 })).toMatchObject({ path: 'trials[0].startC' }));
});

const maybe = (min: number, max: number) => fc.option(fc.double({ min, max, noNaN: true }), { nil: undefined });

describe('any card the schema accepts', () => {
  const formats = formatsFor(lantern.preferences, lantern.day);
  it('is judged without a fault, in legal ranges and whole sentences', () => {
    fc.assert(fc.property(fc.record({
      pieces: fc.integer({ min: 1, max: 400 }), beforeG: maybe(5, 60000), afterG: maybe(5, 80000), minutes: maybe(0.25, 30), startC: maybe(120, 210), lowestC: maybe(60, 205), backMinutes: maybe(0.25, 90), topUpMl: maybe(0, 10000),
    }), (values) => {
      const trial = trialSchema.parse(JSON.parse(JSON.stringify({ ...base, ...values })));
      const c = calibrate(lantern, trial);
      for (const s of c.settings) expect(Number.isFinite(s.after)).toBe(true);
      for (const n of c.notes) expect(sayMessage(formats, n)).not.toMatch(/undefined|NaN|Infinity/);
      expect('event' in takeTrial(done(setTrial(lantern, trial)), 'first')).toBe(c.settings.length > 0);
    }), { numRuns: 60 });
  });
});
