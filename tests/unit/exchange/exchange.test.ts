import { describe, expect, it } from 'vitest';
import { formatsFor, newEvent } from '../../../shared/event';
import { csv, planJson, planText, shoppingCsv } from '../../../shared/exchange';
import { plan } from '../../../shared/plan';
import { demo, demos } from './demo';

/** Reads comma-separated values as RFC 4180 says, by a reader of its own. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [[]];
  for (const match of text.matchAll(/(?:"((?:[^"]|"")*)"|([^",\r\n]*))(,|\r\n)/g)) {
    rows.at(-1)?.push(match[1]?.replaceAll('""', '"') ?? match[2] ?? '');
    if (match[3] === '\r\n') rows.push([]);
  }
  return rows.slice(0, -1);
}

describe.each(demos)('%s', (name) => {
  const event = demo(name);
  const made = plan(event);
  const formats = formatsFor(event.preferences, event.day);
  const json = planJson(made);

  it('has every part of the JSON, and nothing that JSON cannot hold', () => {
    expect(Object.keys(json)).toEqual(['guests', 'menu', 'shopping', 'frying', 'drinks', 'day', 'safety']);
    expect(JSON.parse(JSON.stringify(json))).toEqual(json);
    expect(JSON.stringify(json)).not.toContain('null,null');
  });
  it('writes amounts as plain decimal strings with a unit', () => {
    const amounts = json.shopping.lines.flatMap((l) => [l.need, l.buy, ...l.packs.map((p) => p.size), ...l.origins.map((o) => o.amount)]);
    expect(amounts.filter((a) => !/^\d+(\.\d+)?$/.test(a.amount))).toEqual([]);
    expect(json.drinks.rounds.flatMap((r) => r.ingredients).filter((i) => !/^\d+(\.\d+)?$/.test(i.amount))).toEqual([]);
  });
  it('says the same numbers as the plan', () => {
    expect(json.guests.adults).toBe(made.guests.adults.value);
    expect(json.menu.dishes.map((d) => d.portions)).toEqual(made.menu.dishes.map((d) => d.portions.value));
    expect(json.frying.batches.length).toBe(made.frying.batches.length);
    expect(json.day.tasks.map((t) => t.id)).toEqual(made.day.tasks.map((t) => t.id));
    expect(json.frying.batches.filter((b) => b.eatBy - b.liftAt > json.frying.holdMinutes + 1e-9)).toEqual([]);
    expect(json.frying.limits.filter((l) => Object.hasOwn(l.others, l.limitedBy))).toEqual([]);
  });
  it('tells it on a page of text without ids, codes or holes', () => {
    const text = planText(made, formats);
    expect(text.startsWith(event.title)).toBe(true);
    for (const dish of made.menu.dishes) expect(text).toContain(dish.name);
    expect(text).not.toMatch(/undefined|NaN|\[object|Infinity|null/);
    expect(text).not.toMatch(/\b(?:P10|P90|kelvin|dispenser|lot)\b/);
    expect(text.split('\n').length).toBeLessThan(120);
  });
  it('lists the shopping as a table with a row for each line', () => {
    const rows = readCsv(shoppingCsv(made, formats));
    expect(rows.length).toBe(made.buying.lines.length + 1);
    expect(new Set(rows.map((r) => r.length))).toEqual(new Set([14]));
    expect(rows[0]?.[0]).toBe('Section');
    expect(rows.slice(1).map((r) => String(r[1])).toSorted()).toEqual(made.buying.lines.map((l) => l.name).toSorted());
  });
});

describe('lines of one ingredient', () => {
  it('that no weight brings into one unit have keys of their own', () => {
    const event = demo('freezer-sunday');
    const [first, ...more] = event.recipes;
    const both: typeof event = first === undefined ? event : { ...event, recipes: [{ ...first, ingredients: [...first.ingredients, ...(['bunch', 'g'] as const).map((unit) => ({ ingredient: 'no-such-herb', amount: { amount: '4', unit }, scaling: { kind: 'linear' as const }, perBowl: false, toTaste: false }))] }, ...more] };
    const lines = planJson(plan(both)).shopping.lines;
    expect(lines.filter((l) => l.ingredient === 'no-such-herb').map((l) => l.key).toSorted()).toEqual(['no-such-herb bunch', 'no-such-herb g']);
    expect(new Set(lines.map((l) => l.key)).size).toBe(lines.length);
  });
});

describe('an empty event', () => {
  const event = newEvent({ id: 'a', title: 'Party', day: '2026-12-12' });
  const text = planText(plan(event), formatsFor(event.preferences, event.day));
  it('has a page too', () => {
    expect(text).toContain('no guests: this is stock for the household');
    expect(text).toContain('no dishes yet');
    expect(text).not.toMatch(/undefined|NaN|Infinity/);
  });
});

describe('comma-separated values', () => {
  it('quote what needs it and end every line with CR LF', () => {
    expect(csv([['a', 'b,c', 'd"e', 'f\ng'], ['1']])).toBe('a,"b,c","d""e","f\ng"\r\n1\r\n');
    expect(csv([])).toBe('');
  });
  it.each(['=1+1', '+1', '-1', '@x', '\tx', '\rx'])('neutralise a formula: %j', (text) => {
    const [row] = readCsv(csv([[text]]));
    expect(row).toEqual([`'${text}`]);
  });
  it('leave harmless text as it is', () => {
    expect(csv([['a=b', '2-3', "'x"]])).toBe("a=b,2-3,'x\r\n");
  });
});
