import { describe, expect, it } from 'vitest';
import * as fc from 'fast-check';
import { formatsFor, panSchema, preferencesSchema } from '../../../shared/event';
import { minutes } from '../../../shared/measure';
import { sayMessage } from '../../../shared/words';
import { toldOnce } from '../../../shared/safety/told-once';
import type { Finding } from '../../../shared/safety';
import { dish, fig, flask, found, judge, recipe, task, type Given } from './subject';

const formats = formatsFor(preferencesSchema.parse({}), '2026-12-12');
const said = (g: Given, rule: string): string[] => found(judge(g), rule).map((f) => sayMessage(formats, f.message));

const panOf = (id: string) => panSchema.parse({ id, name: `Pan ${id}`, shape: 'straight', rimMm: 300, depthMm: 150, oilLitres: 3, burner: 'b' });
const kitchenPan = (id: string, share: number, rimMm: number) => ({
  pan: panOf(id), fullLitres: fig(10), hotOilLitres: fig(3), hotDepthMm: fig(60), surfaceDiameterMm: fig(300), fillShare: fig(share), freeRimMm: fig(rimMm),
  burner: { burner: { id: 'b', name: 'Ring', kind: 'gas', ratedW: 3000, place: 'indoor', portable: false }, usefulW: fig(1200, 'W') },
}) as const;

const session = (off: number) => ({ station: 'a', pan: 'p', heatOnAt: minutes(off - 100), readyAt: minutes(off - 90), heatOffAt: minutes(off) });
it('three flasks of one tea are one, the hottest measured; another drink is another', () => {
  const g: Given = { dishes: [hot('tea'), hot('mint')], dispensers: [flask('tea', [84]), { ...flask('tea', [90]), id: 'second' }, { ...flask('tea', [86]), id: 'third' }, flask('mint', [88])] };
  expect(found(judge(g), 'SC-03').map((f) => f.about)).toEqual([['second', 'tea'], ['mint-flask', 'mint']]);
});
describe('few findings', () => {
  it('pans too full alike are one, the fullest measured and first', () => {
    const g: Given = { pans: [kitchenPan('1', 0.35, 100), kitchenPan('2', 0.42, 100), kitchenPan('3', 0.2, 100), kitchenPan('4', 0.38, 100)] };
    expect(found(judge(g), 'DF-03a')).toMatchObject([{ measured: { value: 0.42, unit: 'share' }, about: ['2', '4', '1'] }]);
    expect(said(g, 'DF-03a')[0]).toMatch(/^Pan 2, Pan 4 and Pan 1: hot oil with a batch in it fills up to 42\s%/);
  });
  it('many are counted', () => {
    const g: Given = { pans: ['1', '2', '3', '4', '5', '6'].map((id, i) => kitchenPan(id, 0.2, 70 - i)) };
    expect(found(judge(g), 'DF-04a')).toMatchObject([{ measured: { value: 65, unit: 'mm' } }]);
    expect(said(g, 'DF-04a')[0]).toMatch(/^Pan 6, Pan 5, Pan 4 and 3 more: 65 mm/);
  });
  it('one pan reads as one', () => expect(said({ pans: [kitchenPan('1', 0.4, 100)] }, 'DF-03a')[0]).toMatch(/^Pan 1: hot oil with a batch in it fills 40\s%/));


  it('a pan heated twice is told once, with its shortest wait', () => {
    const g: Given = {
      event: { kitchen: { pans: [panOf('p')] } }, tasks: [task('away', 'oilAway', 1100, 1120, { station: 'a' })],
      // Only what the rule reads of the end of the oil.
      frying: { sessions: [session(800), session(1000)], oilEnds: [{ pan: 'p', coolMinutes: fig(400, 'min') }] as unknown as NonNullable<Given['frying']>['oilEnds'] & object },
    };
    expect(found(judge(g), 'LF-05')).toMatchObject([{ measured: { value: 100, unit: 'min' }, limit: { value: 400 } }]);
  });
});

const finding = (rule: string, about: readonly string[]): Finding => ({ rule, level: 'warn', measured: { value: 1, unit: '' }, limit: { value: 0, unit: '' }, message: { id: 'safety.guidance' }, title: { id: 'safety.guidance' }, source: 'x', about });
const someFindings = fc.array(fc.record({ rule: fc.constantFrom('HH-01', 'HH-02', 'PR-07', 'PR-04', 'TC-01', 'BO-06', 'ED-04', 'SC-04', 'CD-10', 'LF-02', 'LF-07', 'DF-12'), about: fc.subarray(['a', 'b', 'c']) }), { maxLength: 12 }).map((all) => all.map((f) => finding(f.rule, f.about)));
const hot = (id: string) => dish(recipe(id, ['tea-leaf'], { brewing: { method: 'infuse', hot: true, cupMl: 200 } }), { servedAs: 'cup' });
describe('told once', () => {
  it('adds nothing, keeps the order, and telling it again takes nothing more away', () => {
    fc.assert(fc.property(someFindings, (all) => {
      const kept = toldOnce(all);
      expect(all.filter((f) => kept.includes(f))).toEqual(kept);
      expect(toldOnce(kept)).toEqual(kept);
    }));
  });
  it('something is always left of what was found, for every dish', () => {
    fc.assert(fc.property(someFindings, (all) => {
      expect(new Set(toldOnce(all).map((f) => f.about[0]))).toEqual(new Set(all.map((f) => f.about[0])));
    }));
  });
  it('leaves a rule alone that speaks of another dish', () => expect(toldOnce([finding('PR-07', ['a']), finding('HH-01', ['b'])]).map((f) => f.rule)).toEqual(['PR-07', 'HH-01']));
});
