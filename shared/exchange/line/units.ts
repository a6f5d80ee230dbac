import { Big } from 'big.js';
import type { UnitId } from '../../measure';

/** A unit as it is spelled in a line, and how many of it one spelling means ("dl" is 100 ml). */
export interface SpelledUnit {
  readonly unit: UnitId;
  readonly times: Big;
}

const spellings: readonly (readonly [UnitId, string, string])[] = [
  ['g', '1', 'g gr gm gms gram grams gramme grammes'],
  ['kg', '1', 'kg kgs kilo kilos kilogram kilograms kilogramme kilogrammes'],
  ['oz', '1', 'oz ozs ounce ounces'],
  ['lb', '1', 'lb lbs pound pounds'],
  ['ml', '1', 'ml mls cc millilitre millilitres milliliter milliliters'],
  ['ml', '10', 'cl centilitre centilitres centiliter centiliters'],
  ['ml', '100', 'dl decilitre decilitres deciliter deciliters'],
  ['L', '1', 'l ltr ltrs litre litres liter liters'],
  ['tsp', '1', 'tsp tsps teasp teaspoon teaspoons teaspoonful teaspoonfuls'],
  ['tbsp', '1', 'tbsp tbsps tbs tbl tbls tblsp tblsps tablespoon tablespoons tablespoonful tablespoonfuls'],
  ['cup', '1', 'cup cups c'],
  ['pint', '1', 'pint pints pt pts'],
  ['quart', '1', 'quart quarts qt qts'],
  ['gallon', '1', 'gallon gallons gal gals'],
  ['piece', '1', 'piece pieces pc pcs nos'],
  ['piece', '12', 'dozen doz'],
  ['bunch', '1', 'bunch bunches bund'],
  ['clove', '1', 'clove cloves zehe zehen gousse gousses'],
  ['slice', '1', 'slice slices scheibe scheiben tranche tranches'],
  ['pinch', '1', 'pinch pinches prise prisen'],
  // A spoon of a European recipe is the metric one.
  ['metricTbsp', '1', 'el esslöffel'],
  ['metricTsp', '1', 'tl teelöffel'],
];
const twoWords: readonly (readonly [UnitId, string])[] = [
  ['floz', 'fl oz'], ['floz', 'fluid ounce'], ['floz', 'fluid ounces'],
  ['metricCup', 'metric cup'], ['metricCup', 'metric cups'], ['metricTbsp', 'metric tbsp'], ['metricTbsp', 'metric tablespoon'], ['metricTbsp', 'metric tablespoons'],
  ['metricTsp', 'metric tsp'], ['metricTsp', 'metric teaspoon'], ['metricTsp', 'metric teaspoons'],
];
const one = new Big(1);
const bySpelling: ReadonlyMap<string, SpelledUnit> = new Map([
  ...spellings.flatMap(([unit, times, names]) => names.split(' ').map((name): [string, SpelledUnit] => [name, { unit, times: new Big(times) }])),
  ...twoWords.map(([unit, name]): [string, SpelledUnit] => [name, { unit, times: one }]),
]);

/** Things that are counted but are no measure, singular and plural. They are kept as words; what one of them holds is not assumed. */
const counted: readonly (readonly [string, string])[] = [
  ['can', 'cans'], ['tin', 'tins'], ['jar', 'jars'], ['bottle', 'bottles'], ['packet', 'packets'], ['package', 'packages'], ['pkg', 'pkgs'], ['pack', 'packs'],
  ['box', 'boxes'], ['bag', 'bags'], ['carton', 'cartons'], ['tub', 'tubs'], ['container', 'containers'], ['sachet', 'sachets'], ['envelope', 'envelopes'],
  ['stick', 'sticks'], ['sprig', 'sprigs'], ['stalk', 'stalks'], ['stem', 'stems'], ['rib', 'ribs'], ['head', 'heads'], ['bulb', 'bulbs'], ['ear', 'ears'],
  ['knob', 'knobs'], ['handful', 'handfuls'], ['dash', 'dashes'], ['splash', 'splashes'], ['drizzle', 'drizzles'], ['glug', 'glugs'], ['sheet', 'sheets'],
  ['block', 'blocks'], ['cube', 'cubes'], ['fillet', 'fillets'], ['loaf', 'loaves'], ['ball', 'balls'], ['strip', 'strips'], ['rasher', 'rashers'],
  ['punnet', 'punnets'], ['wedge', 'wedges'], ['scoop', 'scoops'], ['mug', 'mugs'], ['dessertspoon', 'dessertspoons'], ['thumb', 'thumbs'], ['drop', 'drops'],
  ['tray', 'trays'], ['wineglass', 'wineglasses'], ['roll', 'rolls'], ['smidgen', 'smidgens'], ['squeeze', 'squeezes'],
];
const singular: ReadonlyMap<string, string> = new Map(counted.flatMap(([single, plural]) => [[single, single], [plural, single]]));
const plural: ReadonlyMap<string, string> = new Map(counted);

/** The word of a counted thing for a number of them. */
export const countWord = (single: string, many: boolean): string => (many ? (plural.get(single) ?? `${single}s`) : single);

// "thumb-sized" is no thumb.
const token = /[ -]?(\p{L}+)(\.?)(?!\p{L}|-\p{L})/uy;

/** A unit or counted thing found in a text. */
export interface FoundUnit {
  readonly spelled?: SpelledUnit;
  readonly countedIn?: string;
  readonly end: number;
}

function wordAt(text: string, start: number): { readonly word: string; readonly end: number } | null {
  token.lastIndex = start;
  const match = token.exec(text);
  return match === null ? null : { word: match[1] ?? '', end: start + match[0].length };
}

/** "T" is a tablespoon and "t" a teaspoon: the one pair where the size of the letter counts. */
function single(word: string): SpelledUnit | undefined {
  if (word === 'T') return { unit: 'tbsp', times: one };
  if (word === 't') return { unit: 'tsp', times: one };
  return bySpelling.get(word.toLowerCase());
}

/** The unit or counted thing that starts at an offset, right after a number, a space or a hyphen; null when there is none. */
export function unitAt(text: string, start: number): FoundUnit | null {
  const first = wordAt(text, start);
  if (first === null) return null;
  const second = wordAt(text, first.end);
  const two = second === null ? undefined : bySpelling.get(`${first.word} ${second.word}`.toLowerCase());
  if (two !== undefined && second !== null) return { spelled: two, end: second.end };
  const spelled = single(first.word);
  if (spelled !== undefined) return { spelled, end: first.end };
  const countedIn = singular.get(first.word.toLowerCase());
  return countedIn === undefined ? null : { countedIn, end: first.end };
}
