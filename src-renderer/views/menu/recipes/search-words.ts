/** Words that a cook may type and that say nothing of the dish. */
export const emptyWords: ReadonlySet<string> = new Set(['a', 'an', 'and', 'or', 'of', 'the', 'with', 'in', 'for', 'some', 'my']);

/** Words that mean the same in a kitchen, other spellings with them (common practice, no source). Each finds what the others find. */
const alike: readonly (readonly string[])[] = [
  ['chilli', 'chili', 'chile', 'chillies', 'chilies', 'chillis', 'chilis', 'chiles', 'chilly'], ['yoghurt', 'yogurt', 'yoghourt', 'curd'], ['aubergine', 'eggplant', 'brinjal'], ['courgette', 'zucchini'],
  ['fritter', 'fritters', 'pakora', 'pakoras', 'bhaji', 'bhajis', 'bhajia', 'bhajias', 'bajji', 'fried'], ['chutney', 'relish', 'dip', 'sauce'], ['coriander', 'cilantro'], ['sweetcorn', 'corn'], ['maize', 'corn', 'cornmeal', 'polenta'],
  ['flatbread', 'flatbreads', 'chapati', 'chapatis', 'roti', 'rotis'], ['patties', 'patty', 'cutlets', 'burgers'], ['porridge', 'oatmeal'], ['squares', 'bars'], ['rolls', 'buns'], ['griddle', 'pancakes', 'pancake'],
  ['lentils', 'lentil', 'dal', 'daal', 'dhal', 'dahl'], ['mung', 'moong'], ['chickpeas', 'chickpea', 'garbanzo', 'chana'], ['spring', 'green', 'scallion'], ['soup', 'broth'], ['cooler', 'lemonade', 'squash', 'juice'],
  ['cocoa', 'chocolate'], ['mash', 'mashed'], ['freezer', 'frozen', 'freeze'],
];

/** What each of our recipes is called elsewhere, by its id (common practice, no source). */
const alsoCalled: Readonly<Record<string, string>> = {
  'greens-fritters': 'greens pakora spinach bhaji', 'onion-fritters': 'onion bhaji pakora', 'potato-rounds': 'potato fritters pakora bhaji', 'cauliflower-fritters': 'cauliflower fritters pakora', 'aubergine-rounds': 'aubergine fritters pakora',
  'split-pea-patties': 'lentil fritters vada falafel', 'blistered-peppers': 'fried chillies chilli peppers salted peppers green chillies padron', 'spiced-milk-tea': 'chai masala chai milk tea spiced tea', 'black-tea': 'tea chai breakfast tea',
  'ginger-tea': 'ginger chai adrak', 'filter-coffee': 'drip coffee', cocoa: 'hot chocolate', 'mint-infusion': 'mint tea herb tea', 'apple-cinnamon-punch': 'mulled apple juice', 'lemon-water': 'lemonade', 'salted-yoghurt-drink': 'lassi buttermilk ayran',
  'hibiscus-cooler': 'iced hibiscus tea', 'date-lime-chutney': 'sweet chutney dip', 'mint-yoghurt-dip': 'raita mint sauce', 'green-herb-dip': 'green chutney coriander chutney', 'tamarind-date-dip': 'tamarind chutney', 'coconut-dip': 'coconut chutney',
  'sesame-lemon-sauce': 'tahini sauce', 'yoghurt-cucumber-bowl': 'raita tzatziki', 'split-peas-tomato': 'dal', 'mung-ginger': 'dal', 'red-lentils-coconut': 'dal', 'kidney-bean-pot': 'rajma chilli beans chili', 'chickpeas-tomato': 'chana curry',
  'cauliflower-potato': 'aloo gobi curry', 'savoury-semolina': 'upma', 'carrot-pudding': 'carrot halwa', 'semolina-raisin-pudding': 'halwa sheera', 'rice-pudding': 'kheer', 'pea-rice': 'pilau pilaf', 'oven-rolls': 'bread rolls buns', 'maize-squares': 'cornbread',
  'seeded-flatbread': 'naan', flatbread: 'chapati roti', 'freezer-flatbread': 'chapati roti', 'freezer-griddle-cakes': 'pancakes', 'spice-blend': 'garam masala', 'mild-bowl': 'khichdi', 'boiled-rice': 'plain rice', 'plain-mash': 'mashed potatoes', 'fruit-bowl': 'fruit salad',
};

const alikeOf = new Map<string, readonly string[]>();
for (const group of alike) for (const word of group) alikeOf.set(word, [...(alikeOf.get(word) ?? []), ...group]);

/** A typed word and the words that mean the same; while it is being typed, by its beginning from the fourth letter on. */
export function meaning(word: string): readonly string[] {
  const whole = alikeOf.get(word);
  if (whole !== undefined) return [word, ...whole];
  return word.length < 4 ? [word] : [word, ...[...alikeOf].filter(([known]) => known.startsWith(word)).flatMap(([, group]) => group)];
}

/** Other names of one of our recipes; empty for the cook's own. */
export const otherNamesOf = (id: string): string => alsoCalled[id] ?? '';
/** Ids of the recipes that have other names. */
export const otherNamedRecipes: readonly string[] = Object.keys(alsoCalled);
