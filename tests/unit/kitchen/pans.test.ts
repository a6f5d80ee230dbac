import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { curvedRadiusSquared, flatWokVessel, heatUpSeconds, levelRise, planKitchen, roundVessel, segmentVolume, straightVessel, vesselArea, vesselDepth, vesselVolume } from '../../../shared/kitchen';
import { figuresIn, fryEvent, gasRing, roundPan, wordFaults, workingFaults } from '../frying/fry-event';

const pans = [
  { ...roundPan }, { ...roundPan, id: 'deep', rimMm: 240, depthMm: 200 }, { ...roundPan, id: 'wok', shape: 'flatWok', bottomMm: 150, depthMm: 110 },
  { ...roundPan, id: 'steep-wok', shape: 'flatWok', rimMm: 300, bottomMm: 280, depthMm: 180 }, { ...roundPan, id: 'pot', shape: 'straight', rimMm: 280, depthMm: 180 },
  { ...roundPan, id: 'tray', shape: 'rectangular', rimMm: undefined, lengthMm: 500, widthMm: 300, depthMm: 120, oilLitres: 6 }, { ...roundPan, id: 'flood', oilLitres: 30 },
];
const kitchen = planKitchen(fryEvent({ pans, stations: [] }));
const pan = (id: string) => kitchen.pans.find((p) => p.pan.id === id)!;

const useful = (more: Record<string, unknown>, event: Record<string, unknown> = {}) => planKitchen(fryEvent({ burners: [{ ...gasRing, ...more }], more: event })).burners[0]!.usefulW;

describe('geometry', () => {
  const anyVessel = fc.oneof(
    fc.record({ rim: fc.double({ min: 0.1, max: 1, noNaN: true }), depth: fc.double({ min: 0.02, max: 0.6, noNaN: true }) }).map((v) => roundVessel(v.rim, v.depth)),
    fc.record({ rim: fc.double({ min: 0.2, max: 1, noNaN: true }), flat: fc.double({ min: 0.05, max: 1, noNaN: true }), depth: fc.double({ min: 0.02, max: 0.6, noNaN: true }) }).map((v) => flatWokVessel(v.rim, v.flat, v.depth)),
    fc.record({ area: fc.double({ min: 0.01, max: 0.5, noNaN: true }), depth: fc.double({ min: 0.02, max: 0.6, noNaN: true }) }).map((v) => straightVessel(v.area, v.depth)),
  );
  it('finds the depth of a volume and the volume of that depth again', () => {
    fc.assert(fc.property(anyVessel, fc.double({ min: 0.01, max: 1, noNaN: true }), (v, share) => {
      const volume = vesselVolume(v, v.depth) * share;
      expect(vesselVolume(v, vesselDepth(v, volume))).toBeCloseTo(volume, 10);
    }));
  });
  it('rises with the height, by the area of the surface', () => {
    fc.assert(fc.property(anyVessel, fc.double({ min: 0.05, max: 0.9, noNaN: true }), (v, share) => {
      const h = v.depth * share;
      const step = v.depth * 1e-5;
      const slope = (vesselVolume(v, h + step) - vesselVolume(v, h - step)) / (2 * step);
      expect(slope).toBeGreaterThan(0);
      expect(Math.abs(slope / vesselArea(v, h) - 1)).toBeLessThan(1e-3);
    }));
  });
  it('meets the rim: at the top the surface is the opening', () => {
    const v = flatWokVessel(0.4, 0.15, 0.11);
    expect(Math.sqrt(curvedRadiusSquared(v, 0.11))).toBeCloseTo(0.2, 12);
    expect(vesselVolume(v, 0.11)).toBeCloseTo(segmentVolume(0.075, 0.2, 0.11), 12);
  });
  it('takes half a sphere and a wall for a pan deeper than half its rim', () => {
    expect(vesselVolume(roundVessel(0.24, 0.2), 0.2)).toBeCloseTo((2 / 3) * Math.PI * 0.12 ** 3 + Math.PI * 0.12 ** 2 * 0.08, 12);
  });
  it('never says more than the rim', () => expect(vesselDepth(roundVessel(0.4, 0.14), 1)).toBe(0.14));
  it('lifts the level of a straight pan by the load over density and area', () => {
    expect(levelRise(straightVessel(0.05, 0.3), 0.004, 0.41, 820)).toBeCloseTo(0.41 / 820 / 0.05, 12);
  });
});

describe('pans with oil', () => {
  it('are the worked case: 3 L in a 40 × 14 cm round pan stand 75.5 mm deep, 325 mm across, 64 mm under the rim', () => {
    const p = pan('pan-1');
    expect(p.fullLitres.value).toBeCloseTo(10.2, 1);
    expect(Math.abs(p.hotDepthMm.value - 75.5)).toBeLessThan(0.2);
    expect(Math.abs(p.surfaceDiameterMm.value - 325)).toBeLessThan(1);
    expect(Math.abs(p.freeRimMm.value - 64)).toBeLessThan(1);
  });
  it('stand at the rim when there is more oil than pan', () => {
    expect(pan('flood').freeRimMm.value).toBe(0);
    expect(pan('flood').fillShare.value).toBeGreaterThan(1);
  });
  it('may be oblong', () => {
    expect(pan('tray').fullLitres.value).toBeCloseTo(18, 9);
    expect(pan('tray').hotDepthMm.value).toBeCloseTo((pan('tray').hotOilLitres.value / 15) * 100, 9);
  });
  it('swell: hot oil takes about an eighth more room', () => {
    const share = pan('pan-1').hotOilLitres.value / 3;
    expect(share).toBeGreaterThan(1.115);
    expect(share).toBeLessThan(1.13);
  });
  it('show figures that recompute from named inputs', () => {
    const all = figuresIn(kitchen);
    expect(all.length).toBeGreaterThan(30);
    expect(all.flatMap(workingFaults)).toEqual([]);
    expect(all.flatMap(wordFaults)).toEqual([]);
  });
  it('assume a middling burner when nobody entered it, and say it is assumed', () => {
    const lone = planKitchen(fryEvent({ pans: [{ ...roundPan, burner: 'nowhere' }] })).pans[0]!.burner;
    expect(lone.usefulW.value).toBe(1000);
    expect(lone.usefulW.working().terms.every((t) => t.origin?.kind === 'table')).toBe(true);
  });
  it('take a measured share before the usual one, and a house figure before the table', () => {
    expect(useful({}).value).toBe(2000);
    expect(useful({ usefulShare: 0.5 }).value).toBe(2500);
    expect(useful({}, { houseFigures: [{ figure: 'eta.gas', value: 0.45, why: 'timed a litre' }] }).value).toBe(2250);
    expect(useful({ kind: 'induction' }).value).toBe(4200);
  });
});

describe('heating oil', () => {
  const h = { heatCapacity: 6, power: 1.4, loss: 0.0016, from: 20, to: 177, room: 20 };
  it('takes longer with a loss to the room, never less than without', () => {
    expect(heatUpSeconds(h)).toBeGreaterThan(heatUpSeconds({ ...h, loss: 0 }));
    expect(heatUpSeconds({ ...h, loss: 1e-9 })).toBeCloseTo(heatUpSeconds({ ...h, loss: 0 }), 2);
  });
  it('agrees with steps of a tenth of a second', () => {
    let [t, T] = [0, h.from];
    while (T < h.to) {
      T += ((h.power - h.loss * (T - h.room)) / h.heatCapacity) * 0.1;
      t += 0.1;
    }
    expect(Math.abs(t - heatUpSeconds(h))).toBeLessThan(1);
  });
  it('never gets there on a burner too weak', () => expect(heatUpSeconds({ ...h, power: 0.2 })).toBe(Infinity));
});
