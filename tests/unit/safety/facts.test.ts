import { describe, expect, it } from 'vitest';
import { panSchema } from '../../../shared/event';
import { minutes } from '../../../shared/measure';
import { dish, fig, found, judge, recipe, stands, task, type Given } from './subject';

const pan = panSchema.parse({ id: 'pan', name: 'Pan', shape: 'straight', rimMm: 300, depthMm: 150, oilLitres: 4, burner: 'b' });
const session = { station: 'a', pan: 'pan', heatOnAt: minutes(700), readyAt: minutes(720), heatOffAt: minutes(1000) };
const oil = (litres: number) => [{ pan: 'pan', fillLitres: fig(litres), uptakeLitres: fig(1), heatUpMinutes: fig(15), topUps: [], loadedFreeRimMm: fig(100), loadedFillShare: fig(0.3) }];
const fritters = dish(recipe('fritters', ['chickpea-flour'], { frying: { pieceBatterG: 25, fryMinutes: 4 } }));
const tea = dish(recipe('tea', ['tea-leaf'], { brewing: { method: 'infuse', hot: true, caffeinated: true, cupMl: 200 } }), { servedAs: 'cup' });
const coldTea = dish(recipe('tea', ['lemon-juice-fresh'], { brewing: { method: 'cold', hot: false, cupMl: 200 } }), { servedAs: 'cup' });
const round = (litres: number) => ({ number: 1, drink: 'tea', pot: 'pot', inUrn: false, litres, waterLitres: fig(litres), waterHeldLitres: fig(0), boiledOffLitres: fig(0), heatMinutes: fig(20), startAt: minutes(660), boilAt: minutes(680), readyAt: minutes(690), note: null, ingredients: [] });

/** Everything that the facts matter for: frying on a burner, a potful of tea, children. */
function place(precautions: Readonly<Record<string, unknown>>, more: { readonly burner?: Readonly<Record<string, unknown>>; readonly litres?: number; readonly tea?: number; readonly cold?: boolean; readonly counts?: Given['counts']; readonly kitchen?: Readonly<Record<string, unknown>> } = {}) {
  return judge({
    dishes: [fritters, more.cold === true ? coldTea : tea], holding: {},
    event: {
      precautions,
      kitchen: { pans: [pan], burners: [{ id: 'b', name: 'Ring', kind: 'gas', ratedW: 3000, place: 'indoor', ...more.burner }], pots: [{ id: 'pot', name: 'Pot', litres: 30, massKg: 3 }], cylinders: [{ id: 'c', name: 'Bottle', gasKg: 10, place: 'outdoor' }], ...more.kitchen },
    },
    frying: { sessions: [session], oil: oil(more.litres ?? 4) },
    // Only what the rules read of a round.
    rounds: [{ ...round(more.tea ?? 5) }] as unknown as NonNullable<Given['rounds']>,
    counts: more.counts ?? { adult: 20, age1to3: 2, age7to9: 3 },
  });
}
type More = Parameters<typeof place>[1];
/** Rule, its level, facts it objects to, facts it does not. */
type Row = readonly [rule: string, level: string, bad: Readonly<Record<string, unknown>>, good: Readonly<Record<string, unknown>>, more?: More];
const electric: More = { burner: { kind: 'electric' } };
const outdoors: More = { burner: { kind: 'outdoorGas', place: 'outdoor' } };

describe('facts only the household knows', () => {
  it.each(([
    ['DF-05', 'warn', { friedDry: false }, { friedDry: true }],
    ['DF-10', 'warn', { lidAtHand: false, extinguisher: 'powder' }, { lidAtHand: true }],
    ['DF-10', 'warn', { lidAtHand: false, extinguisher: 'none' }, { lidAtHand: false, extinguisher: 'wetChemical' }],
    ['DF-11', 'stop', { wallMetres: 2.9, outdoorPlace: 'openGround' }, { wallMetres: 3, outdoorPlace: 'openGround' }, outdoors],
    ['DF-11', 'stop', { wallMetres: 5, outdoorPlace: 'deck' }, { wallMetres: 5, outdoorPlace: 'openGround' }, outdoors],
    ['DF-13', 'warn', { flameCm: 40 }, { flameCm: 41 }],
    ['DF-15', 'warn', { oilSigns: 2 }, { oilSigns: 1 }],
    ['DF-18', 'warn', { thermometer: false }, { thermometer: true }, electric],
    ['CD-08', 'stop', { childLine: false }, { childLine: true }],
    ['CD-09', 'warn', { adultsPour: false }, { adultsPour: true }],
    ['CD-02', 'caution', { cutForChildren: false }, { cutForChildren: true }],
    ['GC-02', 'warn', { coAlarm: false }, { coAlarm: true }],
    ['GC-04', 'warn', { air: 'none' }, { air: 'window' }],
    ['GC-06', 'warn', { cylinderCm: 59, leakTested: true }, { cylinderCm: 60, leakTested: true }],
    ['GC-06', 'warn', { cylinderCm: 100, leakTested: false }, { cylinderCm: 100, leakTested: true }],
    ['EL-03', 'warn', { extensionCord: true }, { extensionCord: false }, electric],
    ['EL-05', 'warn', { protectedSockets: false }, { protectedSockets: true }, { burner: { kind: 'electric', place: 'outdoor' } }],
    ['LF-02', 'warn', { carryMetres: 4, carrySteps: false }, { carryMetres: 3, carrySteps: false }],
    ['LF-02', 'warn', { carryMetres: 1, carrySteps: true }, { carryMetres: 1, carrySteps: false }],
    ['LF-07', 'warn', { carryMetres: 11 }, { carryMetres: 10 }, { cold: true }],
    ['LF-04', 'warn', { lifters: 2 }, { lifters: 3 }, { tea: 15 }],
    ['HY-01', 'caution', { handwash: false }, { handwash: true }],
    ['HY-02', 'caution', { tongs: false }, { tongs: true }],
    ['HY-03', 'stop', { ill: true }, { ill: false }],
    ['LO-04', 'warn', { openFoodThrown: false }, { openFoodThrown: true }],
    ['CX-01', 'warn', { occasion: 'paid' }, { occasion: 'private' }],
    ['CX-02', 'caution', { caterer: 'uninstructed' }, { caterer: 'instructed' }],
    ['CX-03', 'warn', { venue: 'hall' }, { venue: 'home' }],
  ] satisfies readonly Row[]).map(([rule, level, bad, good, more]: Row) => ({ rule, level, bad, good, more })))('$rule objects ($level), is in order on the other side, and asks when nothing is said', ({ rule, level, bad, good, more }) => {
    expect(found(place(bad, more), rule).map((f) => f.level)).toEqual([level]);
    expect(stands(place(good, more), rule)).toBe('in order');
    expect(stands(place({}, more), rule)).toBe('needs');
  });
  it('ask for nothing where the matter does not arise', () => {
    const bare = judge({});
    for (const rule of ['DF-10', 'DF-11', 'DF-13', 'DF-18', 'CD-08', 'CD-09', 'GC-02', 'GC-04', 'GC-06', 'EL-03', 'EL-05', 'LF-02', 'LF-04', 'SC-07', 'AL-10']) expect(stands(bare, rule), rule).toBe('in order');
    const noChildren = place({}, { counts: { adult: 20 } });
    for (const rule of ['CD-08', 'CD-09', 'CD-02']) expect(stands(noChildren, rule), rule).toBe('in order');
  });
  it('DF-10 leaves three litres alone', () => expect(stands(place({ lidAtHand: false, extinguisher: 'none' }, { litres: 3 }), 'DF-10')).toBe('in order'));
  it('GC-02 and GC-04 count the hours gas burns inside, with the number', () => {
    expect(found(place({ air: 'none' }), 'GC-04')).toMatchObject([{ measured: { value: 5, unit: 'h' }, limit: { value: 4 } }]);
    for (const rule of ['GC-02', 'GC-04']) expect(stands(place({ air: 'none', coAlarm: false }, outdoors), rule)).toBe('in order');
  });
  it('DF-13 names what was measured', () => expect(found(place({ flameCm: 20 }), 'DF-13')).toMatchObject([{ measured: { value: 20, unit: 'cm' }, limit: { value: 40.6 } }]));
});

describe('LF-01: weight of a pot', () => {
  // NIOSH 94-110 worked for hands 40 cm out, 90 cm up, a turn of 30 degrees: 23 × 0.625 × 0.955 × 0.904 = 12.4 kg. The pot weighs 3 kg.
  it.each([[9, [], []], [10, ['warn'], []], [19, ['warn'], []], [20.5, [], ['stop']]] as const)('%f litres', (litres, a, b) => {
    const p = place({ lifters: 1 }, { tea: litres });
    expect([found(p, 'LF-01a').map((f) => f.level), found(p, 'LF-01b').map((f) => f.level)]).toEqual([a, b]);
  });
  it('names weight and limit', () => expect(found(place({}, { tea: 15 }), 'LF-01a')).toMatchObject([{ measured: { value: 18, unit: 'kg' }, limit: { value: expect.closeTo(12.4, 1), unit: 'kg' } }]));
});

const on = (watts: number, otherWatts: number) => judge({ event: { kitchen: { burners: [{ id: 'p', name: 'Plate', kind: 'electric', ratedW: watts, circuit: 'c' }], circuits: [{ id: 'c', name: 'Left', volts: 120, amps: 15, otherWatts }] } } });
describe('EL-02: what a circuit carries', () => {
  it('stops above the full rating', () => expect(found(on(1400, 401), 'EL-02')).toMatchObject([{ level: 'stop', measured: { value: 1801 }, limit: { value: 1800 } }]));
  it('is in order at it', () => expect(stands(on(1400, 400), 'EL-02')).toBe('in order'));
  it('is not called in order where an appliance is on no circuit that is known', () => {
    const loose = judge({ event: { kitchen: { burners: [{ id: 'p', name: 'Plate', kind: 'electric', ratedW: 9000 }] } } });
    expect(loose.notChecked.filter((n) => n.rule === 'EL-02')).toMatchObject([{ needs: { id: 'safety.needs.circuit', params: { appliance: 'Plate' } } }]);
  });
  it('allows one appliance 80 %', () => {
    expect(stands(on(1440, 0), 'EL-02')).toBe('in order');
    expect(found(on(1441, 0), 'EL-02')).toMatchObject([{ message: { id: 'safety.say.EL-02.one' }, limit: { value: 1440 } }]);
  });
});

describe('GC-07: gas of a cylinder', () => {
  it.each([[8, 'in order'], [8.1, 'found']] as const)('%f kg of 10', (kg, how) => {
    const p = judge({ event: { kitchen: { cylinders: [{ id: 'c', name: 'Bottle', gasKg: 10, place: 'outdoor' }] } }, gas: [{ cylinder: 'c', burners: [], needKg: fig(kg, 'kg'), lasts: fig(100, 'min'), usableKg: 8 }] });
    expect(stands(p, 'GC-07')).toBe(how);
  });
});

const moved = (after: number, cool: number, restHours = 12) => judge({
  event: { kitchen: { pans: [pan], oilRestHours: restHours } }, frying: { sessions: [session], oil: oil(4), oilEnds: [{ pan: 'pan', changeAfter: [], batterPerLitre: fig(1), leftLitres: fig(3), coolMinutes: fig(cool), movableAt: minutes(1000 + cool), curve: () => [] }] as unknown as NonNullable<Given['frying']>['oilEnds'] & object },
  tasks: [task('away', 'oilAway', 1000 + after, 1020 + after, { station: 'a' })],
});
describe('LF-05 and DF-19: moving the oil', () => {
  it('LF-05 objects while the oil is hot', () => {
    expect(found(moved(200, 201), 'LF-05')).toMatchObject([{ level: 'stop', measured: { value: 200 }, limit: { value: 201 } }]);
    expect(stands(moved(201, 201), 'LF-05')).toBe('in order');
  });
  it('DF-19 under an hour, DF-14 under four', () => {
    expect([59, 60, 239, 240].map((after) => ['DF-19', 'DF-14'].filter((r) => stands(moved(after, 10), r) === 'found'))).toEqual([['DF-19'], ['DF-14'], ['DF-14'], []]);
  });
});
