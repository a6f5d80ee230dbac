import type { Entry } from '../formats';

const units: Readonly<Record<string, string>> = { piece: 'piece', bunch: 'bunch', clove: 'clove', slice: 'slice', pinch: 'pinch' };
const one = (unit: string): string => units[unit] ?? unit;

/** Words of the figures of a recipe by itself. */
export const recipeFiguresWords = {
  'rule.menu.lineWeight': 'Weight of an ingredient: its amount, times what one of that unit weighs.',
  'rule.menu.foodWeight': 'Weight of a food: its lines added up.',
  'rule.menu.inside': 'What goes in: the weights of all ingredients added up, as they are written.',
  'rule.menu.promised': 'What it makes, by weight: the yield, times what one of its unit weighs.',
  'rule.menu.ratio': 'Percent of the base: the weight, times 100, divided by the weight of the base.',
  'recipe.term.amount': 'amount',
  'recipe.term.nothing': 'no ingredient can be weighed',
  'recipe.term.gramsOfOne': (p: { unit: string }) => `weight of 1 ${one(p.unit)}`,
  'recipe.term.mlOfOne': (p: { unit: string }) => `size of 1 ${one(p.unit)}`,
  'recipe.term.gramsPerMl': 'weight of a millilitre',
  'recipe.term.asWater': (p: { unit: string }) => `weight of 1 ${one(p.unit)}, taken as water`,
  'recipe.term.yield': 'what the recipe makes',
  'recipe.term.weight': 'weight',
  'recipe.term.baseWeight': 'weight of the base',
} as const satisfies Record<string, Entry>;
