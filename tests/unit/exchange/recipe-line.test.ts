import { Big } from 'big.js';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readIngredientLine, type ReadLine } from '../../../shared/exchange';
import { plain } from '../../../shared/measure';

/** A reading in short: amount, unit or counted word, food, preparation, how far it was read. */
function short(line: string): string {
  const { amount, unit, countedIn, item, preparation, toTaste, read } = readIngredientLine(line);
  const number = amount === undefined ? '-' : [amount.low, ...(amount.high === undefined ? [] : [amount.high])].map((n) => plain(n)).join('..');
  return [number, unit ?? countedIn ?? '', item, preparation ?? '', toTaste ? 'taste' : '', read].join('|');
}
const size = ({ pack }: ReadLine): string => (pack === undefined ? '' : `${plain(pack.count.low)} x ${plain(pack.size.amount.low)} ${pack.size.unit}`);
const also = ({ also: other }: ReadLine): string => (other === undefined ? '' : `${plain(other.amount.low)} ${other.unit}`);

describe('one number and a unit', () => {
  it.each([
    ['2 1/2 cups flour, sifted', '2.5|cup|flour|sifted||whole'],
    ['1½ tbsp oil', '1.5|tbsp|oil|||whole'],
    ['1 ½ tbsp oil', '1.5|tbsp|oil|||whole'],
    ['1-1/2 cups sugar', '1.5|cup|sugar|||whole'],
    ['1 and 1/2 cups sugar', '1.5|cup|sugar|||whole'],
    ['500g rice', '500|g|rice|||whole'],
    ['500 grams of rice', '500|g|rice|||whole'],
    ['1,5 kg potatoes', '1.5|kg|potatoes|||whole'],
    ['0,25 l milk', '0.25|L|milk|||whole'],
    ['.5 cup milk', '0.5|cup|milk|||whole'],
    ['¼ tsp. turmeric', '0.25|tsp|turmeric|||whole'],
    ['1 T sugar', '1|tbsp|sugar|||whole'],
    ['1 t salt', '1|tsp|salt|||whole'],
    ['2 Tbsp. butter', '2|tbsp|butter|||whole'],
    ['8 fl. oz. cream', '8|floz|cream|||whole'],
    ['2 fluid ounces cream', '2|floz|cream|||whole'],
    ['2 dl water', '200|ml|water|||whole'],
    ['1 metric cup water', '1|metricCup|water|||whole'],
    ['2 EL Essig', '2|metricTbsp|Essig|||whole'],
    ['1 dozen eggs', '12|piece|eggs|||whole'],
    ['½ bunch coriander, chopped', '0.5|bunch|coriander|chopped||whole'],
    ['1 heaped tbsp sugar', '1|tbsp|sugar|heaped||whole'],
    ['2 large cloves garlic', '2|clove|garlic|large||whole'],
    ['2 garlic cloves, minced', '2|clove|garlic|minced||whole'],
    ['1 cup 2% milk', '1|cup|2% milk|||whole'],
    ['500 g 00 flour', '500|g|00 flour|||whole'],
    ['half a cup of milk', '0.5|cup|milk|||whole'],
    ['one and a half cups water', '1.5|cup|water|||whole'],
    ['1 lb boneless, skinless chicken thighs', '1|lb|boneless, skinless chicken thighs|||whole'],
  ])('%s', (line, wanted) => expect(short(line)).toBe(wanted));
});

describe('counted things, ranges and sums', () => {
  it.each([
    ['1-2 cloves garlic', '1..2|clove|garlic|||whole'],
    ['2–3 green chillies, slit', '2..3||green chillies|slit||whole'],
    ['1 to 1½ cups water', '1..1.5|cup|water|||whole'],
    ['1 - 1 1/2 cups water', '1..1.5|cup|water|||whole'],
    ['1 tsp - 1 tbsp chilli', '1..3|tsp|chilli|||whole'],
    ['one or two lemons', '1..2||lemons|||whole'],
    ['1 lb. 4 oz potatoes', '1.25|lb|potatoes|||whole'],
    ['1 cup plus 2 tablespoons flour', '1.125|cup|flour|||whole'],
    ['3 large eggs (about 150 g)', '3||large eggs|||whole'],
    ['a lemon', '1||lemon|||whole'],
    ['an onion, finely chopped', '1||onion|finely chopped||whole'],
    ['a pinch of salt', '1|pinch|salt|||whole'],
    ['1 handful of mint', '1|handful|mint|||whole'],
    ['Juice of 1 lemon', '1||lemon|juice||whole'],
    ['A 2-inch piece of ginger', '1|piece|ginger|2-inch||whole'],
    ['Pinch of salt', '1|pinch|salt|||whole'],
    ['Large handful of mint, torn', '1|handful|mint|Large, torn||whole'],
    ['Squeeze of lemon', '1|squeeze|lemon|||whole'],
    ['1/2 of a lemon', '0.5||lemon|||whole'],
    ['1 thumb-sized piece ginger', '1||thumb-sized piece ginger|||whole'],
    ['juice 1 lemon', '1||lemon|juice||whole'],
    ['750 g – 1 kg potatoes', '750..1000|g|potatoes|||whole'],
    ['Onion - 2', '2||Onion|||whole'],
    ['Rice 500g', '500|g|Rice|||whole'],
    ['Chickpea flour: 1 cup', '1|cup|Chickpea flour|||whole'],
  ])('%s', (line, wanted) => expect(short(line)).toBe(wanted));
});

describe('no amount', () => {
  it.each([
    ['Salt', '-||Salt|||whole'],
    ['salt to taste', '-||salt||taste|whole'],
    ['Salt and pepper, to taste', '-||Salt and pepper||taste|whole'],
    ['water as needed', '-||water|as needed|taste|whole'],
    ['1 tsp salt, or to taste', '1|tsp|salt||taste|whole'],
    ['oil for deep frying', '-||oil|for deep frying||whole'],
  ])('%s', (line, wanted) => expect(short(line)).toBe(wanted));
});

describe('what is left to the cook, and never guessed', () => {
  it.each([
    ['a few sprigs of thyme', '-|sprig|thyme|||part', 'a few'],
    ['some oil', '-||oil|||part', 'some'],
    ['1 tbsp each cumin and coriander', '1|tbsp|each cumin and coriander|||part', 'each cumin and coriander'],
    ['handfuls of mint', '-|handful|mint|||part', 'handful'],
    ['up to 3 tbsp water', '-||up to 3 tbsp water|||none', 'up to 3 tbsp water'],
    ['2-inch piece ginger', '-||2-inch piece ginger|||part', '2-inch piece ginger'],
    ['2 cups flour, plus 3 tbsp for dusting', '2|cup|flour|plus 3 tbsp for dusting||part', 'plus 3 tbsp for dusting'],
    ['2 cups milk or 1 can coconut milk', '2|cup|milk or 1 can coconut milk|||part', 'milk or 1 can coconut milk'],
    ['2 cans (800 g) beans', '2|can|beans|||part', '(800 g)'],
    ['1,500 cups milk', '-||1,500 cups milk|||none', '1,500 cups milk'],
    ['1.500 g flour', '-||1.500 g flour|||none', '1.500 g flour'],
    ['1/0 cup milk', '-||1/0 cup milk|||none', '1/0 cup milk'],
    ['For the dough:', '-||For the dough|||none', 'For the dough:'],
    ['7up', '-||7up|||none', '7up'],
    ['5', '5|||||none', '5'],
  ])('%s', (line, wanted, rest) => {
    expect(short(line)).toBe(wanted);
    expect(readIngredientLine(line).rest).toBe(rest);
  });
  it('reads a thousand where the unit leaves no doubt', () => {
    expect(short('1,500 g flour')).toBe('1500|g|flour|||whole');
    expect(short('1.500 kg flour')).toBe('1.5|kg|flour|||whole');
    expect(short('0.125 g saffron')).toBe('0.125|g|saffron|||whole');
    expect(short('1,500,000 g flour')).toBe('1500000|g|flour|||whole');
  });
});

describe('sizes of packs and second amounts', () => {
  it.each([
    ['2 (400 g) cans chickpeas, drained', '2 x 400 g'], ['1 (14.5-ounce) can diced tomatoes', '1 x 14.5 oz'], ['1 14-oz can coconut milk', '1 x 14 oz'],
    ['2 x 400g tins tomatoes', '2 x 400 g'], ['two 14-ounce cans beans', '2 x 14 oz'], ['1 can (14 oz) coconut milk', '1 x 14 oz'],
    ['3 cans (400 g each) beans', '3 x 400 g'], ['4 (6-ounce) salmon fillets', '4 x 6 oz'], ['2 cans (800 g) beans', ''], ['2 cans beans', ''],
  ])('%s', (line, wanted) => expect(size(readIngredientLine(line))).toBe(wanted));
  it.each([
    ['1 cup (120 g) flour', '120 g'], ['500g/1lb 2oz chicken', '1.125 lb'], ['1 cup / 240 ml milk', '240 ml'], ['1 cup or 240 ml milk', '240 ml'],
    ['2 cups flour (about 250 g)', '250 g'], ['3 large eggs (about 150 g)', ''],
  ])('%s', (line, wanted) => expect(also(readIngredientLine(line))).toBe(wanted));
});

describe('properties', () => {
  const units = ['cup', 'tbsp', 'tsp', 'g', 'kg', 'oz', 'lb', 'ml'] as const;
  it('reads any whole number with any fraction in every usual way of writing', () => {
    const signs: Readonly<Record<string, readonly [string, number, number]>> = { half: ['½', 1, 2], third: ['\u2153', 1, 3], threeQuarters: ['¾', 3, 4], eighth: ['\u215b', 1, 8] };
    fc.assert(fc.property(fc.integer({ min: 1, max: 99 }), fc.constantFrom(...Object.values(signs)), fc.constantFrom(...units), (whole, [sign, above, below], unit) => {
      const wanted = plain(new Big(above).div(below).plus(whole));
      for (const written of [`${whole}${sign}`, `${whole} ${sign}`, `${whole} ${above}/${below}`, `${whole}-${above}/${below}`, `${whole} ${above}\u2044${below}`]) {
        const read = readIngredientLine(`${written} ${unit} thing`);
        expect(read.amount === undefined ? written : plain(read.amount.low)).toBe(wanted);
        expect(read.unit).toBe(unit);
      }
    }), { numRuns: 300 });
  });
  it('reads decimals with a point or a comma the same, and both ends of ranges', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 999 }), fc.integer({ min: 1, max: 99 }), fc.constantFrom(...units), (whole, hundredths, unit) => {
      const digits = String(hundredths).padStart(2, '0');
      const wanted = plain(new Big(`${whole}.${digits}`));
      for (const text of [`${whole}.${digits}`, `${whole},${digits}`]) expect(plain(readIngredientLine(`${text}${unit} thing`).amount?.low ?? new Big(-1))).toBe(wanted);
      const range = readIngredientLine(`${whole + 1}-${whole + 2}.${digits} ${unit} thing`).amount;
      expect([range?.low, range?.high].map((end) => plain(end ?? new Big(-1)))).toEqual([String(whole + 1), plain(new Big(`${whole + 2}.${digits}`))]);
    }), { numRuns: 1000 });
  });
  it('keeps the text of every line, whatever it is, and never throws', () => {
    fc.assert(fc.property(fc.oneof(fc.string({ maxLength: 600 }), fc.string({ unit: 'binary', maxLength: 60 }),
      fc.array(fc.constantFrom('1', '½', '2-3', '/', '(', ')', '400 g', 'cups', 'can', ',', ' ', 'of', 'a', 'few', 'salt', 'to taste', 'x', '-', '1,000', 'plus', '%', ':'), { maxLength: 14 }).map((parts) => parts.join(' '))), (line) => {
      const read = readIngredientLine(line);
      expect(read.text).toBe(line);
      // What was read whole names a food; of the rest the cook is shown something to look at.
      const told = read.read === 'whole' ? /\p{L}/u.test(read.item) : line === '' || (read.rest ?? '') !== '';
      expect({ line, told }).toEqual({ line, told: true });
    }), { numRuns: 2000 });
  });
  it('loses no word: each stands in the reading, or is its number, unit or "to taste"', () => {
    const foods = ['flour', 'chickpeas', 'fresh coriander', 'red onions', 'coconut milk', 'basmati rice'];
    const preparations = ['', ', sifted', ', finely chopped', ' (optional)', ', peeled and cut into 4', ' - rinsed well', '; drained', ', plus 2 tbsp extra', ' (about 30 g)', ' or 2 tbsp butter', ' to taste'];
    fc.assert(fc.property(fc.constantFrom('', '1 ', '1½ ', '2-3 ', 'about 2 ', '2 (400 g) ', '1 heaped '), fc.constantFrom('', 'cups ', 'cans ', 'g ', 'handfuls of '), fc.constantFrom(...foods), fc.constantFrom(...preparations), (amount, unit, food, preparation) => {
      const line = `${amount}${unit}${food}${preparation}`;
      const read = readIngredientLine(line);
      const told = [read.item, read.preparation, read.aside, read.rest, read.unit, read.countedIn].join(' ').toLowerCase();
      const lost = `${food}${preparation}`.replace(/\bto taste\b/, '').split(/[^\p{L}]+/u).filter((word) => word.length > 2 && !told.includes(word.toLowerCase()));
      // A bracket read as the second amount of a measure is kept as a number, not as words.
      expect(read.also === undefined ? lost : lost.filter((word) => word !== 'about')).toEqual([]);
    }), { numRuns: 2000 });
  });
});
