import { describe, expect, it } from 'vitest';
import { recompute } from '../../../shared/figure';
import { plan } from '../../../shared/plan';
import { demo, demoNames } from '../demo/demo';
import { dish, fig, flask, found, judge, recipe, type Given } from './subject';

describe('measured values with their working', () => {
  it.each(demoNames)('%s: every one is what its working gives, with inputs', (name) => {
    const figures = plan(demo(name)).safety.findings.flatMap((f) => (f.figure === undefined ? [] : [{ f, figure: f.figure }]));
    for (const { f, figure } of figures) {
      const working = figure.working();
      expect(working.terms.length, f.rule).toBeGreaterThan(0);
      expect(recompute(working), f.rule).toBeCloseTo(figure.value, 9);
      expect(figure.value, f.rule).toBeCloseTo(f.measured.value, 9);
    }
  });

  it('there are some in every demo with guests', () => { for (const name of ['lantern-evening', 'school-fair-stall'] as const) expect(plan(demo(name)).safety.findings.filter((f) => f.figure !== undefined).length).toBeGreaterThan(0); });

  it('a cup: what it loses in pouring, then Newton’s cooling', () => {
    const tea = dish(recipe('tea', ['tea-leaf'], { brewing: { method: 'infuse', hot: true, cupMl: 200 } }), { servedAs: 'cup' });
    const [f] = found(judge({ dishes: [tea], dispensers: [flask('tea', [88, 90, 86])] }), 'SC-03');
    const working = f?.figure?.working();
    const value = (key: string): number => { const v = working?.terms.find((t) => t.key === key)?.value; return typeof v === 'number' ? v : Number.NaN; };
    expect(value('flask')).toBe(90);
    const room = value('room');
    expect(f?.measured.value).toBeCloseTo(room + (90 - value('drop') - room) * Math.exp((-value('rate') * value('minutes')) / 60), 9);
    expect(working === undefined ? 0 : recompute(working)).toBeCloseTo(f?.measured.value ?? -1, 9);
  });

  it('a pot: the fuller of drink and water, and the pot itself', () => {
    const tea = dish(recipe('tea', ['tea-leaf'], { brewing: { method: 'infuse', hot: true, cupMl: 200 } }), { servedAs: 'cup' });
    const round = { number: 1, drink: 'tea', pot: 'pot', inUrn: false, litres: 14, waterLitres: fig(15, 'L') };
    const g: Given = {
      dishes: [tea], event: { kitchen: { pots: [{ id: 'pot', name: 'Pot', litres: 20, massKg: 2.5 }] } },
      // Only what the rules read of a round.
      rounds: [round] as unknown as NonNullable<Given['rounds']>,
    };
    const [f] = found(judge(g), 'LF-01a');
    expect(f?.measured).toEqual({ value: 17.5, unit: 'kg' });
    expect(f?.figure === undefined ? 0 : recompute(f.figure.working())).toBe(17.5);
    expect(found(judge(g), 'LF-06')).toEqual([]);
  });

  it('time out: from the last step to the last portion', () => {
    const [f] = found(judge({ dishes: [{ ...dish(recipe('d', ['potato'])), lastServed: 870 }], holding: { d: { place: 'counter' } } }), 'TC-01');
    expect(f?.figure === undefined ? 0 : recompute(f.figure.working())).toBe(2.5);
  });
});
