import { describe, expect, test } from 'vitest';
import { eventSchema, formatsFor } from '../../../shared/event';
import { drinksWords } from '../../../shared/words/catalogue/drinks';
import { fryingWords } from '../../../shared/words/catalogue/frying';
import { guestsWords } from '../../../shared/words/catalogue/guests';
import { kitchenWords } from '../../../shared/words/catalogue/kitchen';
import { timelineWords } from '../../../shared/words/catalogue/timeline';
import type { Formats } from '../../../shared/words';

const event = eventSchema.parse({ format: 'brimful-event/1', id: 'w', title: 'Words', day: '2026-12-12', opensAt: 600, closesAt: 700 });
const systems: readonly (readonly [string, Formats])[] = [
  ['metric, 24 h', formatsFor(event.preferences, event.day)],
  ['US, 12 h', formatsFor({ ...event.preferences, units: 'us', clock: '12' }, event.day)],
];
const named = new Set(['drink', 'dish', 'station', 'pan', 'step', 'dispenser', 'thing', 'pot', 'person']);
/** Is a set of values and names of its own, said in tests/unit/cooking/words.test.ts. */
const partOfDish = 'of';
type Params = Record<string, number | string>;
type Write = (p: Params, f: Formats) => string;
/** Has a test of its own: what the kitchen lacks is said by numbers, what is taken by times. */
const twoSided = 'timeline.overload.thing';
/** Lists names, no number: said in meals-and-tables.test.ts. */
const listed = 'timeline.task.putOut';
const entries = Object.entries({ ...drinksWords, ...fryingWords, ...guestsWords, ...kitchenWords, ...timelineWords })
  .flatMap(([id, entry]) => (typeof entry === 'function' && id !== twoSided && id !== listed ? [[id, entry as unknown as Write] as const] : []));

/** Parameters a sentence reads, found by letting it read. */
function keysOf(write: Write, f: Formats): string[] {
  const keys = new Set<string>();
  write(new Proxy<Params>({}, { get: (_, key) => { keys.add(String(key)); return named.has(String(key)) ? 'Name' : 3; } }), f);
  return [...keys].filter((key) => key !== partOfDish);
}
/** Values of one number that a reader must be able to tell apart, all of the same plural; the last pair only by whole hours or kilowatts. */
const values = [3, 2000, 4000] as const;

describe.each(systems)('every sentence with a number, in %s', (_, f) => {
  test.each(entries)('%s says each number and name it is given', (id, write) => {
    const keys = keysOf(write, f);
    const base: Params = Object.fromEntries(keys.map((k) => [k, named.has(k) ? `Name of ${k}` : 600]));
    for (const key of keys) {
      const [low, middle, high] = values.map((v) => write({ ...base, [key]: named.has(key) ? `Name ${v}` : v }, f));
      expect(new Set([low, middle, high]).size, `${id}: ${key} is not said: ${String(high)}`).toBe(3);
    }
    expect(keys.length).toBeGreaterThan(0);
  });
});

const lacks = (has: number) => timelineWords[twoSided]({ thing: 'oven', wanted: 9, has, from: 600, to: 660 }, systems[0]![1]);
const taken = (from: number, to: number) => timelineWords[twoSided]({ thing: 'oven', wanted: 1, has: 2, from, to }, systems[1]![1]);

test('what the kitchen lacks is said with how many it lists', () => {
  expect(lacks(3)).toContain('needs 9 ovens and the kitchen lists 3');
  expect(lacks(2)).not.toBe(lacks(3));
  expect(taken(600, 660)).toContain('All ovens it could use are taken');
  expect(new Set([taken(600, 660), taken(610, 660), taken(600, 670)]).size).toBe(3);
});

test('a remedy says how many pieces go in at once', () => {
  const f = systems[0]![1];
  expect(fryingWords['frying.remedy.burner']({ watts: 1000, pieces: 30, now: 24 }, f)).toBe('With 1\u00A0kW more burner, 30 pieces go in at once instead of 24.');
  expect(fryingWords['frying.remedy.lessOil']({ litres: 0.5, pieces: 1, now: 0 }, f)).toContain('1 piece goes in at once instead of 0.');
  expect(fryingWords['frying.shortage.pans']({ pans: 2, station: 'Stall' }, f)).toBe('Add 2 pans like the first at Stall, each with its own burner.');
  expect(fryingWords['frying.shortage.wait']({ minutes: 12 }, f)).toBe('Let guests wait: nobody longer than 12\u00A0min for theirs.');
});
