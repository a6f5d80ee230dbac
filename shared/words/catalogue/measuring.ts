import type { Formats } from '../formats';

const rounded = (share: number, f: Formats): string => (share > 0 ? `${f.percent(share)} more` : `${f.percent(-share)} less`);

/** How amounts are measured: by scale, spoon or cup. */
export const measuringWords = {
  'measuring.lessSure': ({ spread, off }: { readonly spread: number; readonly off: number }, f: Formats) =>
    `less sure: a level measure may weigh ${f.percent(spread)} more or less${Math.abs(off) < 0.01 ? '' : `; rounded to ${rounded(off, f)}`}`,
  'measuring.unmeasured': 'needs a scale: how much a spoon of it weighs is not known',
  'measuring.nothing': 'needs a spoon, a cup or a jug',
  'measuring.rounded': ({ off, exact }: { readonly off: number; readonly exact: string | null }, f: Formats) => `rounded to ${rounded(off, f)}${exact === null ? '' : `; exactly ${exact}`}`,
  'measuring.title': 'Measuring',
  'measuring.lead': 'Amounts are rounded to what can be measured with this. Without a scale, weights are told in level spoons and cups, and are less sure. By how much an amount is rounded stands beside it in the recipe.',
  'measuring.jug': 'Measuring jug', 'measuring.noJug': 'no jug', 'measuring.anyJug': 'finer than 10 ml',
  'measuring.jugStep': ({ ml }: { readonly ml: number }, f: Formats) => `a mark every ${f.number(ml)} ml`,
  'measuring.jugStepUs': 'marks every ¼ cup',
  'measuring.pours': ({ off }: { readonly off: number }, f: Formats) => `Poured amounts, ${f.figure(30, 'ml')} and more: rounded by at most ${f.percent(off)}.`,
  'measuring.pours.none': 'There is nothing to pour by: tick a spoon, or say which jug there is.',
  'measuring.weighs': ({ off, from }: { readonly off: number; readonly from: number }, f: Formats) => `Weighed amounts, ${f.number(from)} g and more: rounded by at most ${f.percent(off)}.`,
  'measuring.scale': 'Scale',
  'measuring.noScale': 'no scale',
  'measuring.anyStep': 'finer than 1 g',
  'measuring.step': ({ grams }: { readonly grams: number }, f: Formats) => `reads whole ${grams === 1 ? 'grams' : `${f.number(grams)} g`}`,
  'measuring.spoons': 'Spoons and cups in the house',
  'measuring.cup': 'cup', 'measuring.halfCup': '½ cup', 'measuring.thirdCup': '1\u20443 cup', 'measuring.quarterCup': '¼ cup',
  'measuring.tbsp': 'tablespoon', 'measuring.halfTbsp': '½ tablespoon', 'measuring.tsp': 'teaspoon', 'measuring.halfTsp': '½ teaspoon', 'measuring.quarterTsp': '¼ teaspoon', 'measuring.eighthTsp': '1\u20448 teaspoon',
} as const;

/** A household's own value in the place of a value of the tables. */
export const ownFigureWords = {
  'own.use': 'Use my own figure',
  'own.useOf': ({ name }: { readonly name: string }) => `Use my own figure: ${name}`,
  'own.change': 'Change my own figure',
  'own.changeOf': ({ name }: { readonly name: string }) => `Change my own figure: ${name}`,
  'own.back': 'Back to the table',
  'own.backOf': ({ name }: { readonly name: string }) => `Back to the table: ${name}`,
  'own.value': ({ name }: { readonly name: string }) => `My own figure: ${name}`,
  'own.badge': 'yours',
  'own.table': ({ value, source }: { readonly value: string; readonly source: string }) => `The table says ${value}: ${source}.`,
  'own.range': ({ least, most }: { readonly least: string; readonly most: string }) => `From ${least} to ${most}.`,
  'own.why': 'own figure of this household',
} as const;
