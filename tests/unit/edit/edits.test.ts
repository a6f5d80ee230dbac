import { describe, expect, it } from 'vitest';
import * as edit from '../../../shared/edit';
import { adultBands, childBands, formatsFor, newEvent, serialiseEvent, type BandId, type Event } from '../../../shared/event';
import { invitedCounts } from '../../../shared/guests';
import { sayMessage } from '../../../shared/words';

const dal: Parameters<typeof edit.addRecipe>[1] = { id: 'dal', name: 'Dal', role: 'pulse', yield: { amount: { amount: '1', unit: 'kg' }, portions: 4 }, ingredients: [{ ingredient: 'salt', amount: { amount: '1', unit: 'tsp' } }] };
const stay = { shortest: 30, usual: 60, longest: 90 };
const formats = formatsFor(newEvent({ id: 'a', title: 'x', day: '2026-12-12' }).preferences, '2026-12-12');
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');

const done = (result: edit.EditResult): Event => {
  if ('problem' in result) throw new Error(`${result.path}: ${sayMessage(formats, result.problem)}`);
  return result.event;
};
const nameOf = (result: edit.EditResult): string => ('problem' in result ? `refused: ${sayMessage(formats, result.problem)}` : plain(sayMessage(formats, result.name)));
const refusal = (result: edit.EditResult): [string, string] => ('problem' in result ? [result.path, plain(sayMessage(formats, result.problem))] : ['', 'done']);

/** A small kitchen: two waves, one dish fried in a wok, one drink in a flask. */
const start = [
  (e: Event) => edit.changeWave(e, 'wave-1', { counts: { adult: 20, age4to6: 5 } }),
  (e: Event) => edit.addWave(e, { id: 'wave-2', name: 'Late', from: 900, to: 960, counts: { adult: 10, age10to12: 5 }, stay }),
  (e: Event) => edit.addRecipe(e, dal),
  (e: Event) => edit.addDish(e, { id: 'dal', recipe: 'dal' }),
  (e: Event) => edit.addPan(e, { id: 'wok', name: 'Wok', shape: 'round', rimMm: 360, depthMm: 90, oilLitres: 2.5, burner: 'burner-1' }),
  (e: Event) => edit.addStation(e, { id: 'fry', name: 'Fry place', pans: ['wok'], dishes: ['dal'] }),
  (e: Event) => edit.addDispenser(e, { id: 'flask', name: 'Red flask', litres: 5, insulation: 'vacuum', dish: 'dal' }),
].reduce((event, step) => done(step(event)), newEvent({ id: 'a', title: 'Party', day: '2026-12-12' }));
const held = (ingredient: string, amount: string, unit: string) => ({ ingredient, amount: { amount, unit } }) as Event['larder'][number];
const people = (event: Event, bands: readonly BandId[]): number => invitedCounts(event).reduce((sum, counts) => sum + bands.reduce((s, band) => s + counts[band], 0), 0);

describe('headcount', () => {
  it('is set as a whole and named by before and after', () => {
    const result = edit.setHeadcount(start, 60, 21);
    expect(nameOf(result)).toBe('30 to 60 adults, 10 to 21 children');
    expect(done(result).guests.headcount).toEqual({ adults: 60, children: 21 });
    expect([people(done(result), adultBands), people(done(result), childBands)]).toEqual([60, 21]);
    expect(nameOf(edit.setHeadcount(start, null, 1))).toBe('10 to 1 child');
  });
  it.each([[-1, 'Headcount, adults: -1 is too small. Write 0 or more.'], [1.5, 'Headcount, adults: 1.5 is not a whole number. Write it without decimals.'], [20001, 'Headcount, adults: 20001 is too large. Write 20,000 or less.'], [Number.NaN, 'Headcount, adults: a number belongs here, not NaN. Write it with digits and without quotation marks.']])('refuses %f adults beside the field', (adults, sentence) => {
    expect(refusal(edit.setHeadcount(start, adults, 0))).toEqual(['guests.headcount.adults', sentence]);
  });
  it('needs a wave', () => {
    const empty = done(edit.removeWave(done(edit.removeWave(start, 'wave-1')), 'wave-2'));
    expect(refusal(edit.setHeadcount(empty, 3, 3))[1]).toBe('There is no wave yet. Add a wave, then set how many come.');
  });
  it('is written into the waves before the counts of one of them change', () => {
    const set = done(edit.setHeadcount(start, 60, 20));
    const changed = done(edit.changeWave(set, 'wave-2', { counts: { adult: 7 } }));
    expect(changed.guests.headcount).toEqual({ adults: null, children: null });
    expect(changed.guests.waves.map((w) => [w.counts.adult, w.counts.age4to6, w.counts.age10to12])).toEqual([[40, 10, 0], [7, 0, 10]]);
    const added = done(edit.addWave(set, { id: 'wave-3', name: 'More', from: 960, to: 990, counts: { adult: 4 }, stay }));
    expect(people(added, adultBands)).toBe(64);
    expect(people(done(edit.removeWave(set, 'wave-2')), adultBands)).toBe(40);
  });
  it('stays set when a wave only moves', () => {
    const set = done(edit.setHeadcount(start, 60, 20));
    expect(done(edit.moveWave(set, 'wave-1', 15)).guests.headcount).toEqual({ adults: 60, children: 20 });
  });
});

describe('waves', () => {
  it('move with their length', () => {
    const result = edit.moveWave(start, 'wave-2', -30);
    expect(nameOf(result)).toBe('Late moved from 15:00 to 14:30');
    expect(done(result).guests.waves.map((w) => [w.from, w.to])).toEqual([[660, 900], [870, 930]]);
  });
  it('change only the fields named', () => {
    const result = edit.changeWave(start, 'wave-1', { stay: { usual: 150 } });
    expect(done(result).guests.waves[0]?.stay).toEqual({ shortest: 60, usual: 150, longest: 180 });
    expect(nameOf(result)).toBe('wave All guests changed (stay)');
  });
  it('are refused when they end before they begin, and the event stays', () => {
    const before = serialiseEvent(start);
    expect(refusal(edit.changeWave(start, 'wave-2', { to: 100 }))).toEqual(['guests.waves[1].to', 'Wave 2 (Late), until: It ends before it begins. Put the end after the start; past midnight counts on from 24:00.']);
    expect(serialiseEvent(start)).toBe(before);
  });
  it('that are not there cannot be edited', () => {
    for (const result of [edit.moveWave(start, 'x', 5), edit.changeWave(start, 'x', {}), edit.removeWave(start, 'x')]) expect(refusal(result)[1]).toBe('"x" is not in the event any more. Choose another.');
  });
});

describe('things of the kitchen', () => {
  it('are added with their defaults', () => {
    expect(done(edit.addPot(start, { id: 'pot-1', name: ' Big pot ', litres: 12 })).kitchen.pots).toEqual([{ id: 'pot-1', name: 'Big pot', litres: 12, massKg: 1.5 }]);
  });
  it('are refused with a short name twice, or too many', () => {
    expect(refusal(edit.addBurner(start, { id: 'burner-1', name: 'Again', kind: 'gas', ratedW: 2000 }))[0]).toBe('kitchen.burners[1].id');
    let full = start;
    for (let n = start.kitchen.stations.length; n < 10; n++) full = done(edit.addStation(full, { id: `s${n}`, name: 'S', pans: ['wok'] }));
    expect(refusal(edit.addStation(full, { id: 'last', name: 'S', pans: ['wok'] }))[1]).toBe('There are 10 already, and no more fit. Take a fry station out first.');
  });
  it('cannot be taken out while something stands on them', () => {
    expect(refusal(edit.removeBurner(start, 'burner-1'))[1]).toBe('Burner 1 is in use by Wok. Give it another burner first.');
    expect(refusal(edit.removeRecipe(start, 'dal'))[1]).toBe('Dal is in use by Dal. Give it another recipe first.');
  });
  it('leave no trace where something can do without them', () => {
    const noPan = done(edit.removePan(start, 'wok'));
    expect([noPan.kitchen.pans, noPan.kitchen.stations]).toEqual([[], []]);
    const noDish = done(edit.removeDish(start, 'dal'));
    expect(noDish.kitchen.stations[0]?.dishes).toEqual([]);
    expect(Object.keys(noDish.kitchen.dispensers[0] ?? {})).not.toContain('dish');
    expect(done(edit.removeStation(start, 'fry')).kitchen.pans.length).toBe(1);
    expect(nameOf(edit.removeDispenser(start, 'flask'))).toBe('flask or urn Red flask taken out');
  });
  it('keep their short name whatever the patch says', () => {
    expect(done(edit.changePan(start, 'wok', { id: 'other', oilLitres: 3 })).kitchen.pans[0]).toMatchObject({ id: 'wok', oilLitres: 3 });
  });
  it('are refused a value out of range, told beside the field', () => {
    expect(refusal(edit.changePan(start, 'wok', { oilLitres: 600 }))).toEqual(['kitchen.pans[0].oilLitres', 'Pan 1 (Wok), oil: 600 is too large. Write 60 or less.']);
    expect(refusal(edit.changePan(start, 'wok', { burner: 'none' }))[0]).toBe('kitchen.pans[0].burner');
    expect(refusal(edit.changePan(start, 'wok', { rimMm: undefined }))[1]).toContain('width at the rim is missing');
  });
  it('take values of the kitchen as a whole', () => {
    expect(done(edit.changeKitchen(start, { roomC: 25 })).kitchen.roomC).toBe(25);
    expect(refusal(edit.changeKitchen(start, { roomC: 90 }))[0]).toBe('kitchen.roomC');
  });
});

describe('dishes and people', () => {
  it('change portion, take-up, time and name; undefined goes back', () => {
    const changed = done(edit.changeDish(start, 'dal', { portion: { amount: '150', unit: 'g' }, takeUp: 0.8, name: 'Yellow dal', served: { kind: 'between', from: 720, to: 780 } }));
    expect(changed.menu.dishes[0]).toMatchObject({ takeUp: 0.8, name: 'Yellow dal' });
    expect(Object.keys(done(edit.changeDish(changed, 'dal', { name: undefined, portion: undefined })).menu.dishes[0] ?? {})).toEqual(['id', 'recipe', 'takeUp', 'served']);
    expect(refusal(edit.changeDish(start, 'dal', { takeUp: 2 }))[0]).toBe('menu.dishes[0].takeUp');
  });
  it('come and go', () => {
    const helped = done(edit.addPerson(start, { id: 'runner', name: 'Runner', roles: ['runner'], from: 600, to: 1200 }));
    expect(done(edit.changePerson(helped, 'runner', { to: 1000 })).people[1]?.to).toBe(1000);
    expect(refusal(edit.changePerson(helped, 'runner', { to: 10 }))[0]).toBe('people[1].to');
    expect(done(edit.removePerson(helped, 'runner')).people.length).toBe(1);
  });
  it('take the first free short name', () => {
    expect(edit.freshId([{ id: 'wave-1' }, { id: 'wave-3' }], 'wave')).toBe('wave-2');
    expect(edit.freshId([], 'pot')).toBe('pot-1');
  });
});

describe('the event as a whole', () => {
  it('takes title, day, times and preferences', () => {
    expect(done(edit.setTitle(start, '  Lantern evening ')).title).toBe('Lantern evening');
    expect(nameOf(edit.setDay(start, '2026-12-13'))).toBe('day: Sunday 13 December');
    expect(nameOf(edit.setTimes(start, 600, 1500))).toBe('open 10:00 to Sun 01:00');
    expect(done(edit.setPreference(start, { units: 'us', cover: 0.8 })).preferences).toMatchObject({ units: 'us', cover: 0.8, paper: 'a4' });
  });
  it('refuses what is not sound', () => {
    expect(refusal(edit.setTitle(start, ''))[0]).toBe('title');
    expect(refusal(edit.setDay(start, '2026-13-01'))[0]).toBe('day');
    expect(refusal(edit.setTimes(start, 800, 800))[0]).toBe('closesAt');
    expect(refusal(edit.setTimes(start, 800, 9999))[0]).toBe('closesAt');
    expect(refusal(edit.setPreference(start, { cover: 1 }))[1]).toContain('share of days to cover: 1 is too large');
  });
});

describe('lines by key', () => {
  it('are set, replaced in place and taken out', () => {
    const one = done(edit.setLarder(start, 'salt', { amount: '500', unit: 'g' }));
    const two = done(edit.setLarder(one, 'sugar', { amount: '1', unit: 'kg' }));
    expect(done(edit.setLarder(two, 'salt', { amount: '2', unit: 'kg' })).larder).toEqual([{ ingredient: 'salt', amount: { amount: '2', unit: 'kg' } }, { ingredient: 'sugar', amount: { amount: '1', unit: 'kg' } }]);
    expect(done(edit.setLarder(two, 'salt', null)).larder.map((l) => l.ingredient)).toEqual(['sugar']);
    expect(refusal(edit.setLarder(two, 'sugar', { amount: '-1', unit: 'kg' }))[0]).toBe('larder[1].amount.amount');
  });
  it('stand in place of all entries that turn into their unit, and leave the others', () => {
    const more = { ...start, larder: [held('salt', '0.5', 'kg'), held('no-such-food', '2', 'slice'), held('salt', '300', 'g'), held('no-such-food', '1', 'kg')] };
    expect(done(edit.setLarder(more, 'salt', { amount: '1', unit: 'kg' })).larder).toEqual([held('salt', '1', 'kg'), more.larder[1], more.larder[3]]);
    expect(done(edit.setLarder(more, 'no-such-food', { amount: '3', unit: 'kg' })).larder).toEqual([more.larder[0], more.larder[1], more.larder[2], held('no-such-food', '3', 'kg')]);
    expect(done(edit.setLarder(more, 'no-such-food', null, 'slice')).larder).toEqual([more.larder[0], more.larder[2], more.larder[3]]);
  });
  it('hold prices, house figures, diets and allergies alike', () => {
    expect(refusal(edit.setPrice(start, 'salt', { price: '1.10', per: { amount: '0', unit: 'kg' } }))[0]).toBe('prices[0].per');
    expect(done(edit.setPrice(start, 'salt', { price: '1.10', per: { amount: '1', unit: 'kg' } })).prices.length).toBe(1);
    const own = done(edit.setHouseFigure(start, 'fry.dw', { value: 0.2, why: 'weighed' }));
    expect(own.houseFigures).toEqual([{ figure: 'fry.dw', value: 0.2, unit: '', why: 'weighed' }]);
    expect(done(edit.setHouseFigure(own, 'fry.dw', null)).houseFigures).toEqual([]);
    expect(refusal(edit.setHouseFigure(start, 'fry.dw', { value: 1, why: '' }))[0]).toBe('houseFigures[0].why');
    const diet = done(edit.setDiet(start, 'vegan', 3));
    expect(done(edit.setDiet(diet, 'vegan', 0)).guests.diets).toEqual([]);
    expect(refusal(edit.setDiet(start, 'vegan', 1.5))[0]).toBe('guests.diets[0].people');
    const allergy = done(edit.setAllergy(start, 'milk', 1, 'also traces'));
    expect(done(edit.setAllergy(allergy, 'milk', 2)).guests.allergies).toEqual([{ allergen: 'milk', people: 2, note: 'also traces' }]);
    expect(done(edit.setHigherRisk(start, true)).guests.higherRisk).toBe(true);
  });
});

describe('every edit', () => {
  it('keeps the parts it does not touch as they are, so that views need not draw them again', () => {
    const after = done(edit.moveWave(start, 'wave-1', 10));
    expect(after.kitchen).toBe(start.kitchen);
    expect(after.recipes).toBe(start.recipes);
    expect(after.guests.waves[1]).toBe(start.guests.waves[1]);
  });
  it('keeps fields of other versions', () => {
    const foreign: Event = { ...start, seats: 4, guests: { ...start.guests, waves: start.guests.waves.map((w) => ({ ...w, colour: 'red' })) } };
    const after = done(edit.changeWave(foreign, 'wave-1', { name: 'First', counts: { adult: 1 } }));
    expect(after['seats']).toBe(4);
    expect(after.guests.waves.map((w) => w['colour'])).toEqual(['red', 'red']);
  });
});
