import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Recipe } from '../../../shared/event';
import {
  emptyShelf, mergeSentences, mergeShelf, mostRecipes, parseShelf, sameRecipe, serialiseShelf, shelfSchema, type MergeChoice, type Shelf,
} from '../../../shared/household';
import { makeFormats, sayMessage } from '../../../shared/words';

const formats = makeFormats({ locale: 'en-GB', clock: '24', day: '2026-12-12', currency: 'EUR', units: 'metric', showAmount: ({ amount, unit }) => [{ text: amount, unit }] });

function recipe(id: string, name = id, grams = '100'): Recipe {
  const [first] = shelfSchema.parse({
    format: 'brimful-shelf/1',
    recipes: [{ id, name, role: 'condiment', yield: { amount: { amount: grams, unit: 'g' }, portions: 4 }, ingredients: [{ ingredient: 'yoghurt', amount: { amount: grams, unit: 'g' } }] }],
  }).recipes;
  if (first === undefined) throw new Error('one recipe in, one out');
  return first;
}
const shelf = (...recipes: readonly Recipe[]): Shelf => ({ ...emptyShelf, recipes: [...recipes] });
const step = (id: string, after: string) => ({ id, name: id, after: [after] });
const ids = (s: Shelf) => s.recipes.map((r) => r.id);
const problems = (text: string): readonly string[] => {
  const read = parseShelf(text);
  return read.ok ? [] : read.problems.map((p) => sayMessage(formats, p.message));
};
function merged(ours: Shelf, theirs: Shelf, choice?: MergeChoice) {
  const m = choice === undefined ? mergeShelf(ours, theirs) : mergeShelf(ours, theirs, () => choice);
  if (!m.ok) throw new Error('it fits');
  return m;
}

describe('reading and writing a shelf', () => {
  it('reads back what it wrote', () => {
    const s = shelf(recipe('dip'), recipe('sauce'));
    const read = parseShelf(serialiseShelf(s));
    expect(read).toEqual({ ok: true, shelf: s, notes: [] });
    expect(serialiseShelf(s).endsWith('\n')).toBe(true);
    expect(serialiseShelf({ recipes: s.recipes, format: s.format })).toBe(serialiseShelf(s));
  });

  it('keeps fields it does not know, on the shelf and in a recipe', () => {
    const text = JSON.stringify({ format: 'brimful-shelf/1', owner: 'kitchen', recipes: [{ ...recipe('dip'), stars: 5 }] });
    const read = parseShelf(text);
    expect(read.ok && serialiseShelf(read.shelf)).toContain('"stars": 5');
    expect(read.ok && serialiseShelf(read.shelf)).toContain('"owner": "kitchen"');
  });

  it('fills in what a short recipe leaves out, and reads past a byte-order mark', () => {
    const text = `\uFEFF${JSON.stringify({ format: 'brimful-shelf/1', recipes: [{ id: 'x', name: 'X', role: 'plain', yield: { amount: { amount: '1', unit: 'kg' }, portions: 8 }, ingredients: [{ ingredient: 'apple', amount: { amount: '1', unit: 'kg' } }] }] })}`;
    const read = parseShelf(text);
    expect(read.ok && read.shelf.recipes).toMatchObject([{ id: 'x', source: 'common practice, no source', steps: [], needsTemperatureControl: true }]);
  });

  it('says in the cook’s words what keeps a file from being read', () => {
    expect(problems('  ')).toEqual(['The file is empty. It holds no recipes.']);
    expect(problems('[1]')[0]).toMatch(/not a recipe shelf/);
    expect(problems('{"format":"brimful-event/1"}')[0]).toMatch(/has "brimful-event\/1"/);
    expect(problems('{"format":"brimful-shelf/2"}')[0]).toMatch(/newer version/);
    expect(problems('{"format": "brimful-shelf/1", ')[0]).toMatch(/ends too early/);
    expect(problems(`{"format":"brimful-shelf/1","recipes":${'['.repeat(80)}${']'.repeat(80)}}`)[0]).toMatch(/64 deep/);
    expect(problems('{"format":"brimful-shelf/1","recipes":[],"n":1e999}')[0]).toMatch(/too large/);
  });

  it('names the recipe and the field that does not fit', () => {
    const text = JSON.stringify({ format: 'brimful-shelf/1', recipes: [{ ...recipe('dip', 'Herb dip'), role: 'supper' }] });
    expect(problems(text)).toHaveLength(1);
    expect(problems(text)[0]).toMatch(/Herb dip/);
    expect(problems(text)[0]).toMatch(/"supper" is not known/);
  });

  it('finds ids used twice, steps that wait for nothing and steps in a circle', () => {
    expect(problems(serialiseShelf(shelf(recipe('dip'), recipe('dip'))))[0]).toMatch(/used twice/);
    const withSteps = (steps: readonly object[]) => JSON.stringify({ format: 'brimful-shelf/1', recipes: [{ ...recipe('dip'), steps }] });
    expect(problems(withSteps([step('a', 'nowhere')]))[0]).toMatch(/"nowhere" is not among/);
    expect(problems(withSteps([step('a', 'b'), step('b', 'a')]))[0]).toMatch(/circle/);
  });

  it('leaves out an unusable field and says so', () => {
    const text = serialiseShelf(shelf(recipe('dip'))).replace('{', '{ "__proto__": {"polluted": true},');
    const read = parseShelf(text);
    expect(read.ok && read.notes).toEqual([{ id: 'shelf.note.dropped', params: { count: 1 } }]);
    expect(Object.hasOwn(Object.prototype, 'polluted')).toBe(false);
  });

  it('tells the first forty problems and counts the rest', () => {
    const text = JSON.stringify({ format: 'brimful-shelf/1', recipes: Array.from({ length: 60 }, (_, i) => ({ ...recipe(`r${i}`), role: 'supper' })) });
    expect(problems(text)).toHaveLength(41);
    expect(problems(text).at(-1)).toMatch(/20 more things/);
  });

  it('never throws, whatever the text', () => {
    fc.assert(fc.property(fc.oneof(fc.string(), fc.json(), fc.string().map((s) => `{"format":"brimful-shelf/1","recipes":${s}}`)), (text) => {
      const read = parseShelf(text);
      expect(read.ok || read.problems.length > 0).toBe(true);
    }), { numRuns: 500 });
  });
});

describe('merging shelves by recipe id', () => {
  it('adds what is new after ours, in their order', () => {
    const m = merged(shelf(recipe('b'), recipe('a')), shelf(recipe('d'), recipe('c')));
    expect(ids(m.shelf)).toEqual(['b', 'a', 'd', 'c']);
    expect(m.report.added).toEqual(['d', 'c']);
  });

  it('does not double what is equal, whatever the order of its fields', () => {
    const r = recipe('dip');
    const turned = Object.fromEntries(Object.entries(r).toReversed());
    const back = shelfSchema.parse({ format: 'brimful-shelf/1', recipes: [turned] });
    expect(merged(shelf(r), back).report.same).toEqual(['dip']);
    expect(sameRecipe(r, recipe('dip', 'dip', '101'))).toBe(false);
  });

  it('keeps both by default, the incoming one under a second id', () => {
    const m = merged(shelf(recipe('dip'), recipe('dip-2', 'taken')), shelf(recipe('dip', 'Other dip')));
    expect(ids(m.shelf)).toEqual(['dip', 'dip-2', 'dip-3']);
    expect(m.shelf.recipes.map((r) => r.name)).toEqual(['dip', 'taken', 'Other dip']);
    expect(m.report.renamed).toEqual([{ from: 'dip', to: 'dip-3' }]);
  });

  it('never takes an id that a later recipe brings with it', () => {
    const m = merged(shelf(recipe('dip')), shelf(recipe('dip', 'Other'), recipe('dip-2', 'Second')));
    expect(ids(m.shelf)).toEqual(['dip', 'dip-3', 'dip-2']);
  });

  it('cuts a long id so that the second one is still an id', () => {
    const long = 'x'.repeat(64);
    const m = merged(shelf(recipe(long)), shelf(recipe(long, 'Other')));
    expect(ids(m.shelf)[1]).toBe(`${'x'.repeat(62)}-2`);
    expect(parseShelf(serialiseShelf(m.shelf)).ok).toBe(true);
  });

  it('leaves ours or takes theirs when told to, in place', () => {
    const [ours, theirs] = [shelf(recipe('a'), recipe('b')), shelf(recipe('a', 'New a'))];
    expect(merged(ours, theirs, 'ours').shelf).toEqual(ours);
    expect(merged(ours, theirs, 'ours').report.kept).toEqual(['a']);
    const m = merged(ours, theirs, 'theirs');
    expect(m.shelf.recipes.map((r) => r.name)).toEqual(['New a', 'b']);
    expect(m.report.replaced).toEqual(['a']);
  });

  it('refuses more than a shelf holds', () => {
    const many = shelf(...Array.from({ length: mostRecipes }, (_, i) => ({ ...recipe('x'), id: `r${i}` })));
    const m = mergeShelf(many, shelf(recipe('one-more')));
    expect(m.ok ? '' : sayMessage(formats, m.message)).toMatch(/at most 2,000 recipes; together these are 2,001/);
  });

  it('says what it did, and nothing of what it did not', () => {
    const m = merged(shelf(recipe('a'), recipe('s')), shelf(recipe('a', 'New'), recipe('n'), recipe('s')));
    expect(mergeSentences(m.report).map((s) => sayMessage(formats, s))).toEqual([
      '1 recipe added.', '1 already on the shelf, word for word.', 'Both kept, the new one under a second name: a → a-2.',
    ]);
    expect(mergeSentences(merged(emptyShelf, emptyShelf).report)).toEqual([]);
    expect(mergeSentences(merged(shelf(recipe('a')), shelf(recipe('a', 'New')), 'theirs').report).map((s) => sayMessage(formats, s))).toEqual(['Replaced: a.']);
    expect(mergeSentences(merged(shelf(recipe('a')), shelf(recipe('a', 'New')), 'ours').report).map((s) => sayMessage(formats, s))).toEqual(['Your own stays as it is: a.']);
  });

  const anyShelf = fc.uniqueArray(fc.record({ id: fc.constantFrom('a', 'b', 'c', 'a-2', 'b-2'), grams: fc.constantFrom('100', '200', '300') }), { selector: (r) => r.id, maxLength: 5 })
    .map((list) => shelf(...list.map((r) => recipe(r.id, r.id, r.grams))));
  const anyChoice = fc.constantFrom<MergeChoice>('ours', 'theirs', 'both');

  it('loses nothing, doubles no id, and does no more the second time', () => {
    fc.assert(fc.property(anyShelf, anyShelf, anyChoice, (ours, theirs, choice) => {
      const once = merged(ours, theirs, choice);
      expect(new Set(ids(once.shelf)).size).toBe(once.shelf.recipes.length);
      expect(ids(once.shelf)).toEqual(expect.arrayContaining(ids(ours)));
      const { added, same, kept, replaced, renamed } = once.report;
      expect([...added, ...same, ...kept, ...replaced, ...renamed.map((r) => r.from)].sort()).toEqual(ids(theirs).sort());
      // With "both" every incoming recipe is there, word for word but for its id.
      const lost = theirs.recipes.filter((r) => !once.shelf.recipes.some((x) => sameRecipe({ ...x, id: r.id }, r)));
      expect(choice === 'both' ? lost : []).toEqual([]);
      expect(merged(once.shelf, theirs, choice).shelf).toEqual(once.shelf);
      expect(merged(once.shelf, once.shelf).shelf).toEqual(once.shelf);
      expect(parseShelf(serialiseShelf(once.shelf)).ok).toBe(true);
    }), { numRuns: 1000 });
  });

  it('does what looking at every recipe for every other one would do', () => {
    // Ids and grams clash often, so that contents come, go and come back under other ids.
    const choices = fc.infiniteStream(anyChoice);
    fc.assert(fc.property(anyShelf, anyShelf, choices, (ours, theirs, stream) => {
      const given = [...stream.take(theirs.recipes.length)];
      const turn = (): (() => MergeChoice) => { let at = 0; return () => given[at++] ?? 'both'; };
      const [choose, plainly] = [turn(), turn()];
      const expected = [...ours.recipes];
      const taken = new Set([...ours.recipes, ...theirs.recipes].map((r) => r.id));
      for (const incoming of theirs.recipes) {
        const at = expected.findIndex((r) => r.id === incoming.id);
        if (at < 0) { expected.push(incoming); continue; }
        if (expected.some((r) => sameRecipe({ ...r, id: incoming.id }, incoming))) continue;
        const choice = plainly();
        if (choice === 'theirs') expected[at] = incoming;
        if (choice !== 'both') continue;
        let n = 2;
        while (taken.has(`${incoming.id}-${n}`)) n += 1;
        taken.add(`${incoming.id}-${n}`);
        expected.push({ ...incoming, id: `${incoming.id}-${n}` });
      }
      const m = mergeShelf(ours, theirs, choose);
      expect(m.ok && m.shelf.recipes).toEqual(expected);
    }), { numRuns: 500 });
  });

  it('looks at each recipe a few times, however many clash', () => {
    let looks = 0;
    const counted = (r: Recipe): Recipe => Object.defineProperty({ ...r }, 'source', { enumerable: true, get: () => { looks += 1; return ''; } });
    const many = (name: string): Shelf => shelf(...Array.from({ length: 200 }, (_, i) => counted(recipe(`r${i}`, `${name} ${i}`))));
    const [ours, theirs] = [many('Ours'), many('Theirs')];
    looks = 0;
    expect(merged(ours, theirs).report.renamed).toHaveLength(200);
    expect(looks).toBeLessThan(6 * 400);
  });

  it('adds a renamed recipe only once, however often it comes', () => {
    const [ours, theirs] = [shelf(recipe('a')), shelf(recipe('a', 'Other'))];
    const once = merged(ours, theirs).shelf;
    expect(merged(once, theirs).shelf).toEqual(once);
  });
});
