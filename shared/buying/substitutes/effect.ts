import { allergenIds, dietIds, type AllergenId, type DietId, type Event, type Recipe } from '../../event';
import { contentsOf } from '../../menu';
import { fryingOil, ingredient, type Substitution } from '../../reference';
import type { Message } from '../../words';
import { swapped } from './swap';

/** What a substitution does to who can eat what. Dishes by name. */
export interface SubstitutionEffect {
  /** Null when it cannot be made: the sentence says why. */
  readonly event: Event | null;
  /** Allergens that come into dishes, with how many guests avoid them (0 when nobody does). */
  readonly adds: readonly { readonly allergen: AllergenId; readonly dishes: readonly string[]; readonly people: number }[];
  readonly removes: readonly { readonly allergen: AllergenId; readonly dishes: readonly string[]; readonly people: number }[];
  /** Diets a dish is no longer open to, and those it becomes open to. */
  readonly closes: readonly { readonly diet: DietId; readonly dishes: readonly string[]; readonly people: number }[];
  readonly opens: readonly { readonly diet: DietId; readonly dishes: readonly string[]; readonly people: number }[];
  /** The same in sentences, the gravest first; one that says so when nothing changes. */
  readonly sentences: readonly Message[];
}

interface Contents { readonly dish: string; readonly allergens: ReadonlySet<string>; readonly diets: ReadonlySet<string> }

/** What is in a dish, the oil it is fried in included. */
function inDish(event: Event, name: string, recipe: Recipe): Contents {
  const { allergens, diets } = contentsOf(recipe);
  const oil = recipe.frying === undefined ? null : fryingOil(event.kitchen.oilKind);
  const against = oil === null ? [] : (ingredient(oil.ingredient)?.against ?? []);
  return { dish: name, allergens: new Set([...allergens, ...(oil?.allergens ?? [])]), diets: new Set(diets.filter((d) => !against.includes(d))) };
}

const inAll = (event: Event): Contents[] => event.menu.dishes.flatMap((dish) => {
  const recipe = event.recipes.find((r) => r.id === dish.recipe);
  return recipe === undefined ? [] : [inDish(event, dish.name ?? recipe.name, recipe)];
});

/** Names of the dishes that have it after and not before. */
const gained = (before: readonly Contents[], after: readonly Contents[], has: (c: Contents) => boolean): string[] =>
  after.filter((c, i) => has(c) && before[i] !== undefined && !has(before[i])).map((c) => c.dish);

const allergenWord = (allergen: AllergenId): Message => ({ id: `allergen.${allergen}` });
const dietWord = (diet: DietId): Message => ({ id: `diet.${diet}` });
/** Those that concern most guests first. */
const first = <T extends { readonly people: number }>(list: readonly T[]): T[] => list.toSorted((a, b) => b.people - a.people);

function sentencesOf({ adds, removes, closes, opens }: Omit<SubstitutionEffect, 'sentences' | 'event'>, to: string): Message[] {
  const all: Message[] = [
    ...first(adds).map(({ allergen, dishes, people }): Message => ({ id: 'buying.swap.adds', params: { to, allergen: allergenWord(allergen), dishes: [...dishes], people } })),
    ...first(closes).map(({ diet, dishes, people }): Message => ({ id: 'buying.swap.closes', params: { diet: dietWord(diet), dishes: [...dishes], people } })),
    ...first(removes).map(({ allergen, dishes, people }): Message => ({ id: 'buying.swap.removes', params: { allergen: allergenWord(allergen), dishes: [...dishes], people } })),
    ...first(opens).map(({ diet, dishes, people }): Message => ({ id: 'buying.swap.opens', params: { diet: dietWord(diet), dishes: [...dishes], people } })),
  ];
  return all.length === 0 ? [{ id: 'buying.swap.same' }] : all;
}

/** What a substitution would do, before it is chosen: allergens and diets of every dish it touches, the shared oil included. */
export function substitutionEffect(event: Event, row: Substitution): SubstitutionEffect {
  const to = ingredient(row.to)?.name ?? row.to;
  const next = swapped(event, row);
  if (next === null) return { event: null, adds: [], removes: [], closes: [], opens: [], sentences: [{ id: 'buying.swap.cannot', params: { to } }] };
  const [before, after] = [inAll(event), inAll(next)];
  const avoid = (allergen: AllergenId): number => event.guests.allergies.filter((a) => a.allergen === allergen).reduce((sum, a) => sum + a.people, 0);
  const eat = (diet: DietId): number => event.guests.diets.filter((d) => d.diet === diet).reduce((sum, d) => sum + d.people, 0);
  const allergensOf = (from: readonly Contents[], into: readonly Contents[]) => allergenIds.flatMap((allergen) => {
    const dishes = gained(from, into, (c) => c.allergens.has(allergen));
    return dishes.length === 0 ? [] : [{ allergen, dishes, people: avoid(allergen) }];
  });
  const dietsOf = (from: readonly Contents[], into: readonly Contents[]) => dietIds.flatMap((diet) => {
    const dishes = gained(from, into, (c) => c.diets.has(diet));
    return dishes.length === 0 ? [] : [{ diet, dishes, people: eat(diet) }];
  });
  const effect = { adds: allergensOf(before, after), removes: allergensOf(after, before), closes: dietsOf(after, before), opens: dietsOf(before, after) };
  return { event: next, ...effect, sentences: sentencesOf(effect, to) };
}
