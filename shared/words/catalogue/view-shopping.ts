import type { Entry, Formats } from '../formats';

/** Labels of the view Shopping. */
export const viewShoppingWords = {
  'view.shopping': 'Shopping',
  'view.shopping.lead': (p: { n: number }, f: Formats) => (p.n === 0 ? 'Nothing to buy yet.' : `${f.plural(p.n, '1 thing', `${f.number(p.n)} things`)} to buy.`),
  'view.shopping.cost': (p: { cost: string }) => `Known prices together ${p.cost}.`,
  'view.shopping.noCost': 'No prices entered yet.',
  'view.shopping.emptyTitle': 'Nothing to buy yet',
  'view.shopping.empty': 'Choose dishes in Menu and say who comes in Guests; what they need appears here.',
  'view.shopping.table': 'What to buy',
  'view.shopping.section': 'Section',
  'view.shopping.allSections': 'All sections',
  'view.shopping.show': 'Show section',
  'view.shopping.ingredient': 'Ingredient',
  'view.shopping.need': 'Needed',
  'view.shopping.larder': 'In the house',
  'view.shopping.larderOf': (p: { ingredient: string }) => `${p.ingredient} in the house`,
  'view.shopping.needOf': (p: { ingredient: string }) => `${p.ingredient} needed`,
  'view.shopping.buy': 'Buy',
  'view.shopping.when': 'Not before',
  'view.shopping.anyDay': 'any day',
  'view.shopping.cost.head': 'Cost',
  'view.shopping.csv': 'Save as a table (CSV)',
  'view.shopping.saved': (p: { path: string }) => `Written to ${p.path}`,
  'view.shopping.unknownTitle': 'Not in the table of ingredients',
  'view.shopping.unknown': (p: { ingredient: string; dishes: string }) => `${p.ingredient}, for ${p.dishes}. It is not on the list; buy it by the recipe.`,
  'view.shopping.sortBy': (p: { column: string }) => `Sort by ${p.column}`,
} as const satisfies Record<string, Entry>;
