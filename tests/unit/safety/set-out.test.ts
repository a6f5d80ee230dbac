import { describe, expect, it } from 'vitest';
import { recompute } from '../../../shared/figure';
import { amountOf, minutes } from '../../../shared/measure';
import { batch, dish, fig, flask, found, judge, recipe, stands, task, type Given } from './subject';

const precautions = (p: Readonly<Record<string, unknown>>) => ({ event: { precautions: p } });
const worked = (g: Given, rule: string): number => { const [f] = found(judge(g), rule); return f?.figure === undefined ? Number.NaN : recompute(f.figure.working()); };

// One portion a minute from noon, for so many minutes.
const table = (length: number, changed: boolean | undefined, place = 'cold'): Given => ({
  dishes: [dish(recipe('d', ['potato']), { portions: fig(length, 'portions'), demand: { fromMinute: minutes(720), values: Array.from({ length }, () => 1) }, lastServed: 720 + length })],
  holding: { d: { place, temperatureC: place === 'hot' ? 65 : 4 } }, ...precautions(changed === undefined ? {} : { platesChanged: changed }),
});
describe('TC-07: small platters', () => {
  it('cautions where one platter serves longer than two hours, with what two hours take', () => {
    expect(found(judge(table(180, false)), 'TC-07')).toMatchObject([{ level: 'caution', measured: { value: 180, unit: 'portions' }, limit: { value: 120 } }]);
    expect(found(judge(table(180, false, 'hot')), 'TC-07')).toHaveLength(1);
    expect(worked(table(180, false), 'TC-07')).toBe(180);
  });
  it('is in order for two hours, and where platters are changed', () => expect([stands(judge(table(120, false)), 'TC-07'), stands(judge(table(180, true)), 'TC-07')]).toEqual(['in order', 'in order']));
  it('asks when nothing is said', () => expect(stands(judge(table(180, undefined)), 'TC-07')).toBe('needs'));
  it('takes the busiest two hours, wherever they are', () => {
    const late: Given = { ...table(181, false), dishes: [dish(recipe('d', ['potato']), { portions: fig(140, 'portions'), demand: { fromMinute: minutes(720), values: [20, ...Array.from({ length: 60 }, () => 0), ...Array.from({ length: 120 }, () => 1)] }, lastServed: 901 })] };
    expect(found(judge(late), 'TC-07')).toMatchObject([{ measured: { value: 140 }, limit: { value: 120 } }]);
  });
});

const jug = (hours: number, holding: Readonly<Record<string, { readonly place: string; readonly temperatureC?: number }>> | undefined, roomC = 21, id = 'milk-whole'): Given => ({
  dishes: [dish(recipe('d', [id], { role: 'condiment' }), { firstServed: 720, lastServed: 720 + hours * 60 })], ...(holding === undefined ? {} : { holding }), event: { kitchen: { roomC } },
});
describe('ED-05: the milk jug', () => {
  const cold = { d: { place: 'cold' } };
  it.each([[2, []], [2.1, ['warn']]] as const)('out for %f hours', (h, levels) => expect(found(judge(jug(h, cold)), 'ED-05').map((f) => f.level)).toEqual(levels));
  it('halves the time in a hot room', () => expect(found(judge(jug(1.5, cold, 33)), 'ED-05')).toMatchObject([{ measured: { value: 1.5 }, limit: { value: 1, unit: 'h' } }]));
  it('is in order on ice; where the ice has melted the rule for all cold food speaks', () => {
    expect(judge(jug(6, { d: { place: 'cold', temperatureC: 4 } })).findings).toEqual([]);
    expect(judge(jug(6, { d: { place: 'cold', temperatureC: 9 } })).findings.map((f) => f.rule)).toEqual(['CH-01']);
  });
  it('speaks in place of the rule for cold dishes; on the counter the two hours of all food hold', () => {
    expect(stands(judge(jug(3, cold)), 'CH-05')).toBe('in order');
    const counter = judge(jug(3, { d: { place: 'counter' } }));
    expect([stands(counter, 'TC-01'), stands(counter, 'ED-05')]).toEqual(['found', 'in order']);
  });
  it('asks how it waits', () => expect(stands(judge(jug(3, undefined)), 'ED-05')).toBe('needs'));
  it('is about milk and cream alone', () => expect(stands(judge(jug(3, cold, 21, 'coconut-milk')), 'ED-05')).toBe('in order'));
});

const fill = (at: number) => ({ dispenser: 'tea-flask', at: minutes(at), litres: 5, round: 1, leftLitres: 0, trips: 1 });
const iced = dish(recipe('tea', ['tea-leaf'], { brewing: { method: 'infuse', hot: false, cupMl: 200 } }), { servedAs: 'cup' });
const round = (readyAt: number, madeAhead = false) => ({
  number: 1, drink: 'tea', pot: 'pot', burner: null, inUrn: false, startAt: minutes(readyAt - 20), boilAt: minutes(readyAt - 5), readyAt: minutes(readyAt), startHands: 1, finishHands: 1, litres: 5,
  waterLitres: fig(5, 'L'), heatMinutes: fig(10, 'min'), ingredients: [], apart: [], madeAhead, note: null,
});
// The flask holds something from noon for an hour: its last minute is 12:59 (779).
const tea = (readyAt: number, rest: Partial<Given> = {}): Given => ({ dishes: [iced], dispensers: [flask('tea', Array.from({ length: 60 }, () => 6))], rounds: [round(readyAt)], fills: [fill(720)], ...rest });
describe('ED-07: iced tea', () => {
  it('cautions above eight hours from brewing to the last cup', () => {
    expect(found(judge(tea(779 - 481)), 'ED-07')).toMatchObject([{ level: 'caution', limit: { value: 8, unit: 'h' }, about: ['tea'] }]);
    expect(worked(tea(779 - 481), 'ED-07')).toBeCloseTo(481 / 60, 12);
  });
  it('is in order at eight hours', () => expect(stands(judge(tea(779 - 480)), 'ED-07')).toBe('in order'));
  it('counts from the steps that make it ahead', () => expect(found(judge(tea(700, { rounds: [round(700, true)], tasks: [task('step/b/tea', 'step', 200, 220, { dish: 'tea' })] })), 'ED-07')).toMatchObject([{ measured: { value: (779 - 220) / 60 } }]));
  it('leaves hot tea and lemon water alone', () => {
    for (const other of [dish(recipe('tea', ['tea-leaf'], { brewing: { method: 'infuse', hot: true, cupMl: 200 } }), { servedAs: 'cup' }), dish(recipe('tea', ['lemon-juice-fresh'], { brewing: { method: 'cold', hot: false, cupMl: 200 } }), { servedAs: 'cup' })]) expect(stands(judge(tea(100, { dishes: [other] })), 'ED-07')).toBe('in order');
  });
});

const pickle = (p: Readonly<Record<string, unknown>>, place = 'counter', ingredients = ['carrot', 'vinegar']): Given => ({ dishes: [dish(recipe('d', ingredients, { role: 'preserve', needsTemperatureControl: false }))], holding: { d: { place, temperatureC: 4 } }, ...precautions(p) });
describe('BO-04: a pickle at room temperature', () => {
  it.each([[4.7, ['stop']], [4.6, []]] as const)('with pH %f', (picklePh, levels) => expect(found(judge(pickle({ picklePh })), 'BO-04').map((f) => f.level)).toEqual(levels));
  it('names what was measured', () => expect(found(judge(pickle({ picklePh: 5 })), 'BO-04')).toMatchObject([{ measured: { value: 5, unit: 'pH' }, limit: { value: 4.6 } }]));
  it('stops an untested recipe, takes a tested one, and believes the measurement before the recipe', () => {
    expect([stands(judge(pickle({ pickleTested: false })), 'BO-04'), stands(judge(pickle({ pickleTested: true })), 'BO-04'), stands(judge(pickle({ pickleTested: true, picklePh: 5 })), 'BO-04')]).toEqual(['found', 'in order', 'found']);
  });
  it('asks when nothing is known; what is kept cold or dry is not asked about', () => {
    expect([stands(judge(pickle({})), 'BO-04'), stands(judge(pickle({}, 'cold')), 'BO-04'), stands(judge(pickle({}, 'counter', ['salt', 'cumin-seed'])), 'BO-04')]).toEqual(['needs', 'in order', 'in order']);
  });
});

const line = (ingredient: string, grams: string) => ({ ingredient, amount: amountOf(grams, 'g'), perBowl: false, toTaste: false });
const relish = (vinegar: string): Given => ({ dishes: [dish(recipe('d', ['carrot 800', 'vinegar 200'], { role: 'preserve' }), { factor: 2, lines: [line('carrot', '1600'), line('vinegar', vinegar)] })] });
describe('BO-05: vinegar to vegetables', () => {
  it('warns where the share fell, and shows it worked out', () => {
    // 200 of 1,800 is 11.1 %, written are 20 %: 55.6 % of the share.
    const [f] = found(judge(relish('200')), 'BO-05');
    expect(f).toMatchObject({ level: 'warn', limit: { value: 100, unit: 'percent' } });
    expect(f?.measured.value).toBeCloseTo(55.5556, 3);
    expect(worked(relish('200'), 'BO-05')).toBeCloseTo(55.5556, 3);
  });
  it('is in order in proportion, with more of it, and rounded for the scale', () => { for (const grams of ['400', '450', '395']) expect(stands(judge(relish(grams)), 'BO-05')).toBe('in order'); });
  it('asks nothing of a preserve without vinegar', () => expect(stands(judge({ dishes: [dish(recipe('d', ['carrot 800'], { role: 'preserve' }), { lines: [line('carrot', '1600')] })] }), 'BO-05')).toBe('in order'));
});

const printed = (rows: Readonly<Record<string, Readonly<Record<string, string>>>> | undefined, sheet = 'labels') => ({ event: { issuedSheets: [{ sheet, id: sheet, version: 'A', at: '9:05', fingerprint: 'x', ...(rows === undefined ? {} : { rows }) }] } });
const out = (needsTemperatureControl: boolean): Given => ({ dishes: [dish(recipe('d', ['potato'], { role: 'condiment', needsTemperatureControl }), { lastServed: 900 })], holding: { d: { place: 'counter' } } });
const stew = (allergens: readonly ('milk' | 'sesame')[], ingredients = ['potato']) => dish(recipe('d', ingredients), { allergens });
describe('AL-08 and AL-09: the cards', () => {
  it('AL-08 warns where a card can only say "not checked", with how many', () => {
    expect(found(judge({ dishes: [stew([], ['moon-root', 'star-dust', 'potato'])] }), 'AL-08')).toMatchObject([{ level: 'warn', measured: { value: 2 }, limit: { value: 0 }, message: { params: { ingredient: 'moon root', others: 1 } } }]);
    expect(stands(judge({ dishes: [stew([])] }), 'AL-08')).toBe('in order');
  });
  it('AL-08 does not mind what nobody is served', () => expect(stands(judge({ dishes: [{ ...stew([], ['moon-root']), portions: fig(0) }] }), 'AL-08')).toBe('in order'));
  it('AL-09 warns where a dish no longer is what its printed card says, or has none', () => {
    expect(found(judge({ dishes: [stew(['milk', 'sesame'])], ...printed({ d: { name: 'Dish d', allergens: 'milk' } }) }), 'AL-09')).toMatchObject([{ level: 'warn', measured: { value: 1 }, about: ['d'] }]);
    expect(stands(judge({ dishes: [stew([])], ...printed({}) }), 'AL-09')).toBe('found');
  });
  it('AL-09 is in order while they agree, before anything is printed, and for old files without rows', () => {
    expect(stands(judge({ dishes: [stew(['milk', 'sesame'])], ...printed({ d: { allergens: 'milk sesame' } }) }), 'AL-09')).toBe('in order');
    for (const g of [{}, printed(undefined), printed({ d: { allergens: 'fish' } }, 'drinks')]) expect(stands(judge({ dishes: [stew(['milk'])], ...g }), 'AL-09')).toBe('in order');
  });
});

const uk = (temperatureC: number, place: string): Given => ({ dishes: [dish(recipe('d', ['potato']), { lastServed: 720 + 300 })], holding: { d: { place, temperatureC } }, event: { preferences: { safetyProfile: 'uk' } } });
it('a dip out too long is one finding; a dry one has its own', () => {
  expect(judge(out(true)).findings.map((f) => f.rule)).toEqual(['TC-01']);
  expect(judge(out(false)).findings.map((f) => f.rule)).toEqual(['BO-06']);
});
describe('told once', () => {
  it('rice too cool is told by the rule for rice alone', () => {
    const rice: Given = { dishes: [dish(recipe('d', ['basmati-rice']))], holding: { d: { place: 'hot', temperatureC: 50 } } };
    expect(judge(rice).findings.map((f) => f.rule)).toEqual(['PR-07']);
    expect(judge({ ...rice, dishes: [dish(recipe('d', ['basmati-rice']), { lastServed: 900 })] }).findings.map((f) => f.rule)).toEqual(['PR-04', 'HH-05']);
  });
  it('what is told for one dish is still told for another', () => {
    const two: Given = { dishes: [dish(recipe('d', ['basmati-rice'])), dish(recipe('e', ['potato']))], holding: { d: { place: 'hot', temperatureC: 50 }, e: { place: 'hot', temperatureC: 50 } } };
    expect(judge(two).findings.map((f) => [f.rule, f.about[0]])).toEqual([['HH-01', 'e'], ['PR-07', 'd']]);
  });
  it('under the United Kingdom’s rules the used-up allowance is what is told', () => {
    expect(judge(uk(50, 'hot')).findings.filter((f) => f.level === 'stop').map((f) => f.rule)).toEqual(['HH-03']);
    expect(judge(uk(9, 'cold')).findings.filter((f) => f.level === 'stop').map((f) => f.rule)).toEqual(['CH-03']);
  });
  it('fried pieces of several batches are one finding', () => expect(judge({ frying: { batches: [batch(1, 'f', 130), batch(2, 'f', 140)] } }).findings).toHaveLength(1));
});
