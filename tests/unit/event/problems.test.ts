import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkEvent, formatsFor, newEvent, parseEvent, serialiseEvent, type Event, type ParsedEvent } from '../../../shared/event';
import { sayMessage } from '../../../shared/words';
import { arbitraryEvent } from './arbitrary-event';

const sound = newEvent({ id: 'party', title: 'Party', day: '2026-12-12' });
const formats = formatsFor(sound.preferences, sound.day);
const plain = (text: string): string => text.replaceAll('\u00a0', ' ');
const problemsIn = (read: ParsedEvent): string[] => (read.ok ? [] : read.problems.map((p) => plain(sayMessage(formats, p.message))));
/** The sound event with a change to its file form. */
// oxlint-disable-next-line typescript/no-explicit-any -- the file form is any JSON
const broken = (breakIt: (raw: any) => void): ParsedEvent => {
  const raw: unknown = JSON.parse(serialiseEvent(sound));
  breakIt(raw);
  return parseEvent(JSON.stringify(raw));
};
const recipe = (id: string) => ({ id, name: 'Dal', role: 'pulse', yield: { amount: { amount: '1', unit: 'kg' }, portions: 4 }, ingredients: [{ ingredient: 'salt', amount: { amount: '1', unit: 'tsp' } }] });
const pan = { id: 'wok', name: 'Wok', shape: 'round', rimMm: 360, depthMm: 90, oilLitres: 2.5, burner: 'burner-1' };

describe('a field that does not fit is told in the cook\'s words', () => {
  // oxlint-disable-next-line typescript/no-explicit-any -- the file form is any JSON
  const cases: [string, (raw: any) => void, string, string][] = [
    ['text for a time', (r) => { r.guests.waves[0].from = 'noon'; }, 'guests.waves[0].from', 'Wave 1 (All guests), from: a number belongs here, not "noon". Write it with digits and without quotation marks.'],
    ['a time too late', (r) => { r.guests.waves[0].to = 99999; }, 'guests.waves[0].to', 'Wave 1 (All guests), until: the time is too late (99999 minutes from midnight). The latest is Tue 00:00.'],
    ['half a person', (r) => { r.guests.waves[0].counts.adult = 1.5; }, 'guests.waves[0].counts.adult', 'Wave 1 (All guests), adults: 1.5 is not a whole number. Write it without decimals.'],
    ['fewer than nobody', (r) => { r.guests.waves[0].counts.adult = -3; }, 'guests.waves[0].counts.adult', 'Wave 1 (All guests), adults: -3 is too small. Write 0 or more.'],
    ['too many', (r) => { r.guests.headcount.adults = 50000; }, 'guests.headcount.adults', 'Headcount, adults: 50000 is too large. Write 20,000 or less.'],
    ['a wave that ends before it begins', (r) => { r.guests.waves[0].to = 0; }, 'guests.waves[0].to', 'Wave 1 (All guests), until: It ends before it begins. Put the end after the start; past midnight counts on from 24:00.'],
    ['stays out of order', (r) => { r.guests.waves[0].stay.shortest = 500; }, 'guests.waves[0].stay', 'Wave 1 (All guests), stay: Put the stays in order: shortest, usual, longest.'],
    ['a field left out', (r) => { delete r.guests.waves[0].stay.usual; }, 'guests.waves[0].stay.usual', 'Wave 1 (All guests), stay, usual: this is missing. Add it.'],
    ['a choice nobody knows', (r) => { r.preferences.units = 'stone'; }, 'preferences.units', 'Preferences, units: "stone" is not known here. Use one of these: metric, us.'],
    ['a kind nobody knows', (r) => { r.guests.waves[0].turnout = { kind: 'hope' }; }, 'guests.waves[0].turnout.kind', 'Wave 1 (All guests), how sure, kind: "hope" is not known here. Use one of these: known, share, range.'],
    ['an empty title', (r) => { r.title = ' '; }, 'title', 'Title: " " does not fit. Give it a name.'],
    ['a title too long', (r) => { r.title = 'x'.repeat(200); }, 'title', 'Title: the text is too long. Shorten it to 120 letters.'],
    ['a day that is none', (r) => { r.day = '2026-02-30'; }, 'day', 'Day: "2026-02-30" does not fit. There is no such day; look at the month and the day.'],
    ['a day in other order', (r) => { r.day = '12/12/2026'; }, 'day', 'Day: "12/12/2026" does not fit. Write the day as 2026-12-12.'],
    ['closing before opening', (r) => { r.closesAt = 100; }, 'closesAt', 'Closes: It closes before it opens. Put the closing time after the opening time; past midnight counts on from 24:00.'],
    ['a list that is none', (r) => { r.people = 'Cook'; }, 'people', 'People: a list in square brackets belongs here, not "Cook".'],
    ['a group that is none', (r) => { r.kitchen = 3; }, 'kitchen', 'The event: a group in curly brackets belongs here, not 3.'],
    ['yes and no', (r) => { r.preferences.printAllergies = 'no'; }, 'preferences.printAllergies', 'Preferences, print allergies: true or false belongs here, not "no".'],
    ['no tasks', (r) => { r.people[0].roles = []; }, 'people[0].roles', 'Helper 1 (Cook), tasks: at least 1 must be there. Add one.'],
    ['a number for text', (r) => { r.people[0].name = 7; }, 'people[0].name', 'Helper 1 (cook), name: text in quotation marks belongs here, not 7.'],
    ['an amount in words', (r) => { r.recipes = [{ ...recipe('dal'), yield: { amount: { amount: 'two', unit: 'kg' }, portions: 4 } }]; }, 'recipes[0].yield.amount.amount', 'Recipe 1 (Dal), what the recipe makes, amount: "two" does not fit. Write a plain number in quotation marks, such as "2.5".'],
    ['nothing made', (r) => { r.recipes = [{ ...recipe('dal'), yield: { amount: { amount: '0', unit: 'kg' }, portions: 4 } }]; }, 'recipes[0].yield.amount', 'Recipe 1 (Dal), what the recipe makes, amount: The amount is 0. Write more than 0.'],
    ['a name used twice', (r) => { r.recipes = [recipe('dal'), recipe('dal')]; }, 'recipes[1].id', 'Recipe 2 (Dal), short name: the short name "dal" is used twice in this list. Give one of them another.'],
    ['a recipe that is not there', (r) => { r.menu.dishes = [{ id: 'd', recipe: 'soup' }]; }, 'menu.dishes[0].recipe', 'Dish 1 (d), recipe: "soup" is not among the recipes of this event. Add it there, or name one that is there.'],
    ['a burner that is not there', (r) => { r.kitchen.pans = [{ ...pan, burner: 'moon' }]; }, 'kitchen.pans[0].burner', 'Pan 1 (Wok), burner: "moon" is not among the burners of this event. Add it there, or name one that is there.'],
    ['a pan that is not there', (r) => { r.kitchen.stations = [{ id: 's', name: 'S', pans: ['wok'] }]; }, 'kitchen.stations[0].pans[0]', 'Fry station 1 (S), pan 1: "wok" is not among the pans of this event. Add it there, or name one that is there.'],
    ['a flask for no dish', (r) => { r.kitchen.dispensers = [{ id: 'f', name: 'Flask', litres: 5, insulation: 'foam', dish: 'tea' }]; }, 'kitchen.dispensers[0].dish', 'Flask or urn 1 (Flask), dish: "tea" is not among the dishes of this event. Add it there, or name one that is there.'],
    ['a pan without a width', (r) => { r.kitchen.pans = [{ ...pan, rimMm: undefined }]; }, 'kitchen.pans[0]', 'Pan 1 (Wok): The width at the rim is missing. Measure across the top of the pan in millimetres.'],
    ['a tray without sides', (r) => { r.kitchen.pans = [{ ...pan, shape: 'rectangular', lengthMm: 300 }]; }, 'kitchen.pans[0]', 'Pan 1 (Wok): Length and width are missing. Measure the pan in millimetres.'],
    ['steps in a circle', (r) => { r.recipes = [{ ...recipe('dal'), steps: [{ id: 'a', name: 'A', after: ['b'] }, { id: 'b', name: 'B', after: ['a'] }] }]; }, 'recipes[0].steps', 'Recipe 1 (Dal), steps: The steps wait for each other in a circle. Take one of the "steps before it" out.'],
    ['a guess out of order', (r) => { r.guests.waves[0].turnout = { kind: 'range', low: 9, likely: 5, high: 10 }; }, 'guests.waves[0].turnout', 'Wave 1 (All guests), how sure: Put the guesses in order: fewest, most likely, most.'],
  ];
  it.each(cases)('%s', (_name, breakIt, path, sentence) => {
    const read = broken(breakIt);
    expect(read.ok ? [] : read.problems.map((p) => p.path)).toEqual([path]);
    expect(problemsIn(read)).toEqual([sentence]);
  });
  it('tells forty and counts the rest', () => {
    const told = problemsIn(broken((r) => { r.people = Array.from({ length: 55 }, () => 3); }));
    expect(told.length).toBe(41);
    expect(told.at(-1)).toBe('15 more things do not fit. Mend those above first.');
  });
  it('shortens what it quotes', () => {
    const [told = ''] = problemsIn(broken((r) => { r.day = 'x'.repeat(5000); }));
    expect(told.length).toBeLessThan(150);
  });
});

describe('a file that is no JSON', () => {
  it.each([
    ['{\n  "format": "brimful-event/1",\n  "title": oops\n}', 'Line 3, letter 12: the file cannot be read from "oops" on. Look for a missing comma, bracket or quotation mark just before it.'],
    ['{\n"a": 1\n"b": 2\n}', 'Line 3, letter 1: the file cannot be read from ""b": 2" on. Look for a missing comma, bracket or quotation mark just before it.'],
    ['{"a": [1, 2', 'Line 1: the file ends too early. A bracket or a quotation mark is not closed; part of the file may be missing. Open the copy that ends in .bak, if there is one.'],
    ['{"a": 1,}', 'Line 1, letter 9: the file cannot be read from "}" on. Look for a missing comma, bracket or quotation mark just before it.'],
    ['{"a": 01}', 'Line 1, letter 7: the file cannot be read from "01}" on. Look for a missing comma, bracket or quotation mark just before it.'],
    ['[true, nul]', 'Line 1, letter 8: the file cannot be read from "nul]" on. Look for a missing comma, bracket or quotation mark just before it.'],
    ['{} {}', 'Line 1, letter 4: the file cannot be read from "{}" on. Look for a missing comma, bracket or quotation mark just before it.'],
    ['  \n', 'The file is empty. Open the copy that ends in .bak, if there is one.'],
  ])('%j', (text, sentence) => {
    expect(problemsIn(parseEvent(text))).toEqual([sentence]);
  });
  it('finds the place in every text cut off or spoiled', () => {
    const text = serialiseEvent(sound);
    fc.assert(fc.property(fc.nat(text.length - 1), fc.constantFrom('', '}', ']', ',', '"', ':', 'x', '\\', '\u0001'), fc.nat(3), (at, put, cut) => {
      const read = parseEvent(text.slice(0, at) + put + text.slice(at + cut));
      expect(problemsIn(read).filter((sentence) => !/\S/.test(sentence))).toEqual([]);
      expect(read.ok || read.problems.length > 0).toBe(true);
    }), { numRuns: 500 });
  });
  it('never throws, whatever the text is', () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.json()), (text) => { expect(parseEvent(text).ok).toBe(false); }), { numRuns: 300 });
  });
});

describe('a hostile file', () => {
  it('is refused when too long or too deep, at once', () => {
    expect(problemsIn(parseEvent('x'.repeat(8_000_001)))[0]).toContain('longer than 8 million letters');
    expect(problemsIn(parseEvent('['.repeat(3_000_000)))[0]).toContain('more than 64 deep');
    expect(problemsIn(parseEvent(`{\n\n"a": ${'['.repeat(70)}${']'.repeat(70)}}`))[0]).toMatch(/^Line 3:/);
  });
  it('does not take brackets inside text for nesting', () => {
    expect(broken((r) => { r.review.notes = '"[[['.repeat(100); }).ok).toBe(true);
  });
  it('cannot reach the prototype of anything', () => {
    const text = serialiseEvent(sound).replace('{', '{"__proto__": {"polluted": true}, "constructor": {"prototype": {"polluted": true}},');
    const read = parseEvent(text);
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
    expect(Object.getPrototypeOf(read.event)).toBe(Object.prototype);
    expect(read.notes.map((n) => sayMessage(formats, n))).toEqual(['1 field with the unusable name "__proto__" was left out.']);
    expect(Object.hasOwn(read.event, 'constructor')).toBe(true);
  });
  it('does not let a number become infinite', () => {
    const read = parseEvent(serialiseEvent(sound).replace('"title"', '"x-mine": 1e999, "title"'));
    expect(read.ok ? [] : read.problems.map((p) => p.path)).toEqual(['x-mine']);
  });
  it('reads a file with a byte order mark and Windows line ends', () => {
    expect(parseEvent(`\uFEFF${serialiseEvent(sound).replaceAll('\n', '\r\n')}`)).toEqual({ ok: true, event: sound, readOnly: false, notes: [] });
  });
});

const withFormat = (format: unknown, more: object = {}): string => JSON.stringify({ ...sound, ...more, format });

describe('other formats', () => {
  it('opens a newer one read-only and says so', () => {
    const read = parseEvent(withFormat('brimful-event/2', { seating: ['new'] }));
    if (!read.ok) throw new Error(JSON.stringify(read.problems));
    expect(read.readOnly).toBe(true);
    expect(read.event).toEqual({ ...sound, seating: ['new'] });
    expect(read.notes.map((n) => sayMessage(formats, n))).toEqual(['This event was written by a newer version (brimful-event/2). You can read and print it here; it cannot be saved, so that nothing is lost.']);
  });
  it('says which version is needed when a newer one cannot be read', () => {
    const [first = ''] = problemsIn(parseEvent(withFormat('brimful-event/3', { opensAt: { hour: 11 } })));
    expect(first).toBe('This event was written by a newer version (brimful-event/3), and this one cannot read all of it. Open it with the newer version.');
  });
  it.each([[undefined, 'nothing'], ['something/1', '"something/1"'], [1, '1']])('refuses what is no event: %s', (format, got) => {
    expect(problemsIn(parseEvent(withFormat(format)))).toEqual([`This file is not an event. Its first field must be "format": "brimful-event/1"; it has ${got}.`]);
  });
  it.each([['[]', 'a list'], ['null', 'nothing'], ['"x"', '"x"']])('refuses a file that is %s', (text, got) => {
    expect(problemsIn(parseEvent(text))[0]).toContain(`it has ${got}.`);
  });
});

describe('checkEvent', () => {
  it('finds nothing in any sound event', () => {
    fc.assert(fc.property(arbitraryEvent, (event) => { expect(checkEvent(event)).toEqual([]); }), { numRuns: 100 });
  });
  it('finds a reference that was broken', () => {
    const event: Event = { ...sound, kitchen: { ...sound.kitchen, burners: [] } };
    expect(checkEvent({ ...event, kitchen: { ...event.kitchen, circuits: [] } })).toEqual([]);
    const onCircuit = sound.kitchen.burners.map((burner) => ({ ...burner, circuit: 'none' }));
    expect(checkEvent({ ...event, kitchen: { ...event.kitchen, burners: onCircuit } }).map((p) => p.path)).toEqual(['kitchen.burners[0].circuit']);
  });
});
