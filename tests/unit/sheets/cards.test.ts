import { describe, expect, it } from 'vitest';
import { formatsFor, type Event } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { oilStopC } from '../../../shared/safety';
import { sheetDocument, sheetsOf, type SheetKind } from '../../../shared/sheets';
import { demo } from '../demo/demo';

const lantern = demo('lantern-evening');
/** Words of a sheet without tags and hard spaces. */
function words(kind: SheetKind, event: Event = lantern): string {
  const sheets = sheetsOf(plan(event), formatsFor(event.preferences, event.day), { paper: 'a4', printedAt: '12 December 9:05', only: [kind] });
  return sheets.map((s) => sheetDocument(s, { lang: 'en-GB' })).join('\n').replaceAll(/<style>[\s\S]*?<\/style>/g, '').replaceAll(/<[^>]+>/g, ' ').replaceAll(/[\s\u00a0\u202f]+/g, ' ');
}
const made = plan(lantern);
const fritters = made.frying.loads[0];

describe('the first-batch card', () => {
  const card = words('firstBatch');
  it('is made for each fried dish once', () => expect((card.match(/First batch, /g) ?? []).length).toBeGreaterThanOrEqual(new Set(made.frying.loads.map((l) => l.dish)).size));
  it('names what is planned of one full batch beside each blank', () => {
    const frying = made.menu.dishes.find((d) => d.id === fritters?.dish)?.recipe.frying;
    const [pieces = 0, grams = 0] = [fritters?.pieces.value, frying?.pieceBatterG];
    for (const part of [`${pieces} pieces`, `${pieces * grams} g`, `${frying?.targetC ?? 0} °C`, `${fritters?.cycleMinutes.value ?? 0} min or less`]) expect(card).toContain(part);
  });
  it('tells the way without a thermometer, never raw batter, and never water (rules PR-08, DF-06)', () => {
    for (const part of ['a drop of batter', 'never raw batter', 'never water', 'Guidance only']) expect(card).toContain(part);
  });
  it('is entered in grams also where the kitchen is in ounces', () => expect(words('firstBatch', { ...lantern, preferences: { ...lantern.preferences, units: 'us' } })).toMatch(/600 g .*351 °F/));
});

describe('the oil card', () => {
  const card = words('oil');
  it('has fill, window, stop, top-ups, what is left and when it may be moved', () => {
    const [oil] = made.frying.oil;
    expect(card).toContain(`heat off, nothing goes in`);
    expect(card).toContain(`${oilStopC(lantern)} °C`);
    for (const u of oil?.topUps ?? []) expect(card).toContain(`After batch ${u.afterBatch}: pour in`);
    for (const part of ['not under 160 °C', 'never over 190 °C', 'Left at the end', 'nobody moves, pours or strains it before', 'never down the drain', 'every third batch']) expect(card).toContain(part);
  });
  it('is not made where nothing is fried', () => expect(words('oil', demo('freezer-sunday'))).toBe(''));
});

const with2 = (precautions: Event['precautions'], preferences: Partial<Event['preferences']> = {}): string => words('emergency', { ...lantern, precautions, preferences: { ...lantern.preferences, ...preferences } });

describe('the emergency card', () => {
  it('fills in what is known and leaves the rest to write', () => {
    expect(with2({ address: 'Lane 4', emergencyNumber: '112' })).toMatch(/Emergency number 112 We are at Lane 4/);
    expect(with2(undefined)).toContain('Emergency number We are at Ring besides');
  });
  it('has oil fire by region (rules DF-08, DF-09): cover it, or in the United Kingdom leave it', () => {
    const [eu, uk] = [with2({}), with2({}, { safetyProfile: 'uk' })];
    expect(eu).toContain('Slide a lid or baking sheet over it');
    expect(uk).not.toContain('Slide a lid');
    for (const part of ['Do not fight the fire', 'call 999', 'at least 30 minutes']) expect(uk).toContain(part);
    for (const card of [eu, uk]) expect(card).toContain('Never water, and never move the pan');
  });
  it.each([
    ['eu', '112 works everywhere', 'class F is made', ['911', 'class K']], ['us', '911 in the United States', 'class K is made', ['112', 'class F']],
    ['uk', '999 or 112', 'Do not fight the fire', ['911', 'extinguisher']], ['household', 'elsewhere write yours above', 'class F (Europe) or K (United States)', []],
  ] as const)('has the number and the extinguisher of the region: %s', (safetyProfile, number, fire, none) => {
    const card = with2({}, { safetyProfile });
    for (const part of [number, fire, 'stay on the line']) expect(card).toContain(part);
    for (const part of none) expect(card).not.toContain(part);
  });
  it('leaves a line for who carries an injector, where that is asked for and not yet known', () => {
    expect(with2({ printInjectors: true })).toContain('Carries an injector');
    expect(with2({})).not.toContain('Carries an injector');
  });
  it('has 20 minutes of cool running water (rule SC-08) and fumes where gas burns (rule GC-03)', () => {
    const card = with2({});
    for (const part of ['Cool running water on it for 20 minutes', 'three hours', 'No ice', 'every child', 'larger than 3 cm', 'Headache, dizziness']) expect(card).toContain(part);
    const electric: Event = { ...lantern, kitchen: { ...lantern.kitchen, burners: lantern.kitchen.burners.map((b) => ({ ...b, kind: 'induction' as const })) } };
    expect(words('emergency', electric)).not.toContain('Headache');
  });
  it('names who carries an injector only when asked for', () => {
    expect(with2({ injectors: 'Tea, blue bag' })).not.toContain('blue bag');
    expect(with2({ injectors: 'Tea, blue bag', printInjectors: false })).not.toContain('blue bag');
    expect(with2({ injectors: 'Tea, blue bag', printInjectors: true })).toContain('Carries an injector: Tea, blue bag');
  });
  it('is made for a day without frying too, without the fire', () => {
    const card = words('emergency', demo('freezer-sunday'));
    expect(card).toContain('Burn or scald');
    expect(card).not.toContain('Oil on fire');
  });
});
