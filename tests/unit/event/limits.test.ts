import * as fc from 'fast-check';
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { setHouseFigure, setLarder } from '../../../shared/edit';
import { formatsFor, parseEvent, readEvent, serialiseEvent, type Event } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { bandFactors, legalRange, parameters, rolePortions } from '../../../shared/reference';
import { sayMessage } from '../../../shared/words';

const demo: Event = (() => {
  const read = parseEvent(readFileSync(new URL('../../../assets/app/demo/school-fair-stall.brimful', import.meta.url), 'utf8'));
  if (!read.ok) throw new Error('the demo does not open');
  return read.event;
})();
const withFigure = (figure: string, value: number, unit = ''): Event => ({ ...demo, houseFigures: [{ figure, value, unit, why: 'test' }] });
const problemOf = (event: unknown) => { const read = readEvent(event); return read.ok ? null : read.problems[0] ?? null; };
const rangeOf = (id: string) => { const found = legalRange(id); if (found === null) throw new Error(`no range ${id}`); return found; };

/** Ways to numbers that are not finite. */
function notFinite(value: unknown, way = 'plan'): string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [way];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => notFinite(inner, `${way}.${key}`));
}

const withServed = (served: unknown) => ({ ...demo, menu: { dishes: demo.menu.dishes.map((d, i) => (i === 0 ? { ...d, served } : d)) } });

describe('ranges of house figures', () => {
  it('hold the value of the table and its known range, for every parameter', () => {
    for (const p of parameters) {
      const { least, most } = rangeOf(p.id);
      expect([p.id, least < most]).toEqual([p.id, true]);
      for (const known of [p.value, p.low ?? p.value, p.high ?? p.value]) expect([p.id, least <= known && known <= most]).toEqual([p.id, true]);
    }
  });
  it('know the figures of portions, bands and appetite, and nothing else', () => {
    for (const { role } of rolePortions) expect(rangeOf(`portion.${role}`).least).toBe(0);
    for (const { band } of bandFactors) for (const kind of ['food', 'cold', 'hot', 'hotCaffeinated']) expect(rangeOf(`band.${band}.${kind}`).most).toBe(5);
    expect(rangeOf('appetite.3').most).toBe(1);
    for (const key of ['appetite.0', 'appetite.x', 'portion.cake', 'oil.rho', '', 'constructor', '__proto__']) expect(legalRange(key)).toBeNull();
  });

  it('let every plan be worked out, at both ends of every parameter', () => {
    for (const { id } of parameters) {
      for (const value of [rangeOf(id).least, rangeOf(id).most]) {
        const event = withFigure(id, value);
        expect(problemOf(event)).toBeNull();
        expect([id, value, notFinite(plan(event)).slice(0, 3)]).toEqual([id, value, []]);
      }
    }
  }, 240_000);
  it('let every plan be worked out with many figures at their ends together', () => {
    fc.assert(fc.property(fc.array(fc.tuple(fc.constantFrom(...parameters.map((p) => p.id)), fc.boolean()), { minLength: 2, maxLength: 30 }), (picked) => {
      const houseFigures = picked.map(([figure, high]) => ({ figure, value: high ? rangeOf(figure).most : rangeOf(figure).least, unit: '', why: 'test' }));
      expect(notFinite(plan({ ...demo, houseFigures })).slice(0, 3)).toEqual([]);
    }), { numRuns: 25 });
  }, 120_000);
});

describe('what is out of reach', () => {
  it.each([
    ['oil.rho20', 0, 'kg/m3'], ['fry.tau', 0, ''], ['piece.aspect', 0, ''], ['piece.expansion', 0, ''], ['batter.rho', 0, ''], ['disp.kLitres', -1, ''], ['drinks.firstHourCups', 1e6, ''],
    ['portion.friedSnack', 101, 'piece'], ['portion.grain', 6, 'kg'], ['portion.grain', -1, ''], ['band.adult.food', 6, ''], ['appetite.2', 1.5, ''],
  ])('is said of %s = %d, when a file is read and when it is typed', (figure, value, unit) => {
    const read = problemOf(withFigure(figure, value, unit));
    expect(read).toMatchObject({ path: 'houseFigures[0].value', message: { id: 'event.houseRange', params: { number: 1, got: value } } });
    const typed = setHouseFigure(demo, figure, { value, unit, why: 'typed' });
    expect('problem' in typed ? [typed.path, typed.problem.id] : typed).toEqual(['houseFigures[0].value', 'event.houseRange']);
  });
  it('is said in a sentence that names the figure, the fault and the way out', () => {
    const read = problemOf(withFigure('oil.rho20', 0));
    const said = read === null ? '' : sayMessage(formatsFor(demo.preferences, demo.day), read.message);
    expect(said).toMatch(/^House figure 1, .*: 0 kg\/m3 is too small\. Write 227\.5 to 3,?720 kg\/m3, or take the figure out to go back to 920\.$/);
  });
  it('allows a portion in grams of a dish that is counted in pieces elsewhere', () => expect(problemOf(withFigure('portion.friedSnack', 220, 'g'))).toBeNull());

  it.each([
    ['portions', { kind: 'fixed', at: 720, portions: 3_000_000 }, 'event.tooLarge'], ['portions', { kind: 'fixed', at: 720, portions: 20_001 }, 'event.tooLarge'],
    ['at', { kind: 'fixed', at: 4321, portions: 5 }, 'event.tooLate'], ['from', { kind: 'between', from: -1e9, to: 5 }, 'event.tooEarly'], ['to', { kind: 'between', from: 5, to: 1e9 }, 'event.tooLate'],
  ])('is said of served.%s of %j', (field, served, id) => {
    expect(problemOf(withServed(served))).toMatchObject({ path: `menu.dishes[0].served.${field}`, message: { id } });
  });
  it('plans the largest dish that is allowed', () => {
    const read = readEvent(withServed({ kind: 'fixed', at: demo.opensAt + 60, portions: 20_000 }));
    if (!read.ok) throw new Error('twenty thousand portions are allowed');
    expect(notFinite(plan(read.event))).toEqual([]);
  }, 60_000);
  it.each([['101', 'piece'], ['5.001', 'kg'], ['999999999999', 'tsp']])('is said of a portion of %s %s for one adult', (amount, unit) => {
    const dishes = demo.menu.dishes.map((d, i) => (i === 0 ? { ...d, portion: { amount, unit } } : d));
    expect(problemOf({ ...demo, menu: { dishes } })).toMatchObject({ path: 'menu.dishes[0].portion.amount', message: { id: 'event.tooLarge' } });
  });
  it('is said of units that are none, in the larder and in prices', () => {
    expect(problemOf({ ...demo, larder: [{ ingredient: 'salt', amount: { amount: '1', unit: 'bag' } }] })).toMatchObject({ path: 'larder[0].amount.unit', message: { id: 'event.notOneOf' } });
    expect(problemOf({ ...demo, prices: [{ ingredient: 'salt', price: '1', per: { amount: '1', unit: 'bag' } }] })).toMatchObject({ path: 'prices[0].per.unit', message: { id: 'event.notOneOf' } });
    expect(setLarder(demo, 'salt', { amount: '1', unit: 'bag' })).toMatchObject({ path: expect.stringContaining('unit') });
  });
});

describe('house figures that nothing reads', () => {
  it('are kept, and the cook is told', () => {
    const read = parseEvent(serialiseEvent(withFigure('oil.rho21', 0)));
    expect(read).toMatchObject({ ok: true, notes: [{ id: 'event.note.idleFigures', params: { figures: ['oil.rho21'], more: 0 } }], event: { houseFigures: [{ figure: 'oil.rho21', value: 0 }] } });
  });
  it('are no note when all are read', () => expect(parseEvent(serialiseEvent(withFigure('oil.rho20', 915)))).toMatchObject({ ok: true, notes: [] }));
});
