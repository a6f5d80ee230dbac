import { describe, expect, it } from 'vitest';
import { panSchema } from '../../../shared/event';
import { minutes } from '../../../shared/measure';
import { dish, fig, found, judge, recipe, stands, task } from './subject';

const pan = panSchema.parse({ id: 'pan', name: 'Pan', shape: 'straight', rimMm: 300, depthMm: 150, oilLitres: 3, burner: 'b' });
const burner = { burner: { id: 'b', name: 'Ring', kind: 'gas', ratedW: 3000, place: 'indoor', portable: false }, usefulW: fig(1200, 'W') } as const;
const state = (share: number, rimMm: number) => [{ pan, fullLitres: fig(10), hotOilLitres: fig(3), hotDepthMm: fig(60), surfaceDiameterMm: fig(300), fillShare: fig(share), freeRimMm: fig(rimMm), burner }];
const oil = (share: number, rimMm: number) => [{ pan: 'pan', fillLitres: fig(3), uptakeLitres: fig(1), heatUpMinutes: fig(15), topUps: [], loadedFreeRimMm: fig(rimMm), loadedFillShare: fig(share) }];
const session = { station: 'a', pan: 'pan', heatOnAt: minutes(700), readyAt: minutes(720), heatOffAt: minutes(900) };

const friedAt = (targetC: number, oilKind = 'sunflower-refined') =>
  judge({ dishes: [dish(recipe('f', ['chickpea-flour'], { frying: { pieceBatterG: 25, fryMinutes: 4, targetC } }))], event: { kitchen: { oilKind } } });
describe('DF-02: heat of the oil', () => {
  it('objects 15 degrees under the smoke point', () => expect(found(friedAt(195), 'DF-02')).toMatchObject([{ level: 'stop', measured: { value: 195 }, limit: { value: 195, unit: 'degC' } }]));
  it('is in order below', () => expect(stands(friedAt(190), 'DF-02')).toBe('in order'));
  it('objects sooner to an unrefined oil', () => expect(stands(friedAt(177, 'sunflower-unrefined'), 'DF-02')).toBe('found'));
  it('needs an oil it knows', () => expect(stands(friedAt(177, 'walnut'), 'DF-02')).toBe('needs'));
});

const levelFindings = (share: number, rim: number) => {
  const plan = judge({ pans: state(0.2, 100), frying: { oil: oil(share, rim) } });
  return ['DF-03a', 'DF-03b', 'DF-04a', 'DF-04b'].filter((r) => stands(plan, r) === 'found');
};
describe('DF-01: working range of the oil', () => {
  it('warns under 160 and over 190 °C, with the limit it is nearer to', () => {
    expect(found(friedAt(150), 'DF-01')).toMatchObject([{ level: 'warn', measured: { value: 150 }, limit: { value: 160 } }]);
    expect(found(friedAt(192), 'DF-01')).toMatchObject([{ limit: { value: 190 } }]);
  });
  it('is in order inside, and leaves what DF-02 stops to DF-02', () => {
    expect(stands(friedAt(177), 'DF-01')).toBe('in order');
    expect([stands(friedAt(198), 'DF-01'), stands(friedAt(198), 'DF-02')]).toEqual(['in order', 'found']);
  });
});

describe('DF-03 and DF-04: level of the oil, hot and loaded', () => {
  it('is in order at a third and at 80 mm', () => expect(levelFindings(1 / 3, 80)).toEqual([]));
  it('warns over a third, cautions under 80 mm', () => expect(levelFindings(0.34, 79)).toEqual(['DF-03a', 'DF-04a']));
  it('does not stop at a half and at 50 mm', () => expect(levelFindings(0.5, 50)).toEqual(['DF-03a', 'DF-04a']));
  it('stops over a half and under 50 mm, and only stops', () => expect(levelFindings(0.51, 49)).toEqual(['DF-03b', 'DF-04b']));
  it('names measured value and limit', () => {
    const plan = judge({ pans: state(0.2, 100), frying: { oil: oil(0.51, 49) } });
    expect(plan.findings.map((f) => [f.rule, f.level, f.measured.value, f.limit.value])).toEqual([['DF-03b', 'stop', 0.51, 0.5], ['DF-04b', 'stop', 49, 50]]);
  });
  it('judges an idle pan by its hot oil', () => expect(stands(judge({ pans: state(0.6, 100) }), 'DF-03b')).toBe('found'));
});

describe('DF-12: watching', () => {
  const watch = task('watch', 'watchOil', 720, 900, { who: ['fryer'], attention: 0.2, station: 'a' });
  const with2 = (...more: readonly ReturnType<typeof task>[]) => judge({ frying: { sessions: [session] }, tasks: [watch, ...more] });
  it('objects to a second job at the same time, the longest for each person', () => {
    const plan = with2(task('chop', 'step', 800, 815, { who: ['fryer'] }), task('wash', 'clean', 850, 855, { who: ['fryer'] }));
    expect(found(plan, 'DF-12')).toMatchObject([{ level: 'stop', measured: { value: 15, unit: 'min' }, about: ['fryer', 'chop'] }]);
  });
  it('objects when nobody watches', () => {
    const plan = judge({ frying: { sessions: [session] }, tasks: [task('watch', 'watchOil', 720, 900, { station: 'a' })] });
    expect(found(plan, 'DF-12')).toMatchObject([{ message: { id: 'safety.say.DF-12.alone' }, about: ['a'] }]);
  });
  it('is in order with frying at the same pan, other people’s jobs, and jobs before and after', () => {
    const plan = with2(task('fry', 'fry', 730, 735, { who: ['fryer'], station: 'a' }), task('tea', 'brew', 730, 760, { who: ['tea'] }), task('sweep', 'clean', 900, 920, { who: ['fryer'] }));
    expect(stands(plan, 'DF-12')).toBe('in order');
  });
  it('needs a day plan with somebody at the pan', () => expect(stands(judge({ frying: { sessions: [session] } }), 'DF-12')).toBe('needs'));
});

const rested = (oilRestHours: number, ...tasks: readonly ReturnType<typeof task>[]) => judge({ frying: { sessions: [session], oil: oil(0.3, 90) }, tasks, event: { kitchen: { oilRestHours } } });
describe('DF-14: rest of the oil', () => {
  it('objects under four hours', () => expect(found(rested(3), 'DF-14')).toMatchObject([{ level: 'stop', measured: { value: 3, unit: 'h' }, limit: { value: 4, unit: 'h' }, about: ['pan'] }]));
  it('objects to a task that moves it sooner than the event says', () => expect(found(rested(12, task('away', 'oilAway', 960, 970, { station: 'a' })), 'DF-14')[0]?.measured.value).toBe(1));
  it('is in order overnight, and without frying', () => {
    expect(stands(rested(12), 'DF-14')).toBe('in order');
    expect(stands(judge({ event: { kitchen: { oilRestHours: 0 } } }), 'DF-14')).toBe('in order');
  });
});

describe('GC-01 and GC-05: gas', () => {
  const ring = { id: 'r', name: 'Ring', ratedW: 9000 };
  const gas = (burnerPart: Readonly<Record<string, unknown>>, cylinders: readonly unknown[] = []) => judge({ event: { kitchen: { burners: [{ ...ring, ...burnerPart }], cylinders } } });
  it('objects to an outdoor burner inside', () => expect(found(gas({ kind: 'outdoorGas', place: 'indoor' }), 'GC-01')).toMatchObject([{ level: 'stop', about: ['r'] }]));
  it('objects to a portable gas ring inside', () => expect(stands(gas({ kind: 'lpg', place: 'indoor', portable: true }), 'GC-01')).toBe('found'));
  it('is in order outside, and for a built-in hob', () => {
    expect(stands(gas({ kind: 'outdoorGas', place: 'outdoor', portable: true }), 'GC-01')).toBe('in order');
    expect(stands(gas({ kind: 'gas', place: 'indoor' }), 'GC-01')).toBe('in order');
  });
  it('objects to a cylinder inside, not to a small one', () => {
    expect(found(gas({ kind: 'gas' }, [{ id: 'c', gasKg: 5, place: 'indoor' }]), 'GC-05')).toMatchObject([{ level: 'stop', measured: { value: 5, unit: 'kg' }, limit: { value: 0.5 } }]);
    expect(stands(gas({ kind: 'gas' }, [{ id: 'c', gasKg: 0.45, place: 'indoor' }]), 'GC-05')).toBe('in order');
  });
  it('needs the cylinder of a bottled-gas burner', () => expect(stands(gas({ kind: 'outdoorGas', place: 'outdoor' }), 'GC-05')).toBe('needs'));
});

const pluggedIn = (watts: number, circuit: string | undefined = 'c', closesAt = 1140) => judge({ event: { closesAt, kitchen: {
  burners: [{ id: 'p', name: 'Plate', kind: 'induction', ratedW: watts, ...(circuit === undefined ? {} : { circuit }) }], circuits: [{ id: 'c', name: 'Wall', volts: 120, amps: 15, otherWatts: 240 }] } } });
describe('EL-01: circuits', () => {
  it('objects over 80 % for hours', () => expect(found(pluggedIn(1201), 'EL-01')).toMatchObject([{ level: 'stop', measured: { value: 1441, unit: 'W' }, limit: { value: 1440, unit: 'W' } }])); // 15 A at 120 V: 1,440 W (NEC 210.20(A))
  it('is in order at 80 %, and for a short event', () => {
    expect(stands(pluggedIn(1200), 'EL-01')).toBe('in order');
    expect(stands(pluggedIn(1700, 'c', 800), 'EL-01')).toBe('in order');
  });
  it('needs the circuit', () => expect(stands(pluggedIn(1000, 'elsewhere'), 'EL-01')).toBe('needs'));
});
