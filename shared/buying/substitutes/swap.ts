import { Big } from 'big.js';
import { shoppingOf, type Event, type IngredientLine, type Recipe } from '../../event';
import { amountFrom, amountText, convertFood, dimensionOf, type Amount, type UnitId } from '../../measure';
import { fryingOil, fryingOils, ingredient, type Ingredient, type Substitution } from '../../reference';

const decimals = 6;
const smallest = new Big('0.000001');

/** The unit the other food is measured in: the same, but grams where it does not come in pieces of that kind. */
const unitFor = (unit: UnitId, to: Ingredient): UnitId => (dimensionOf(unit) === 'count' && convertFood({ amount: new Big(1), unit }, 'g', to) === null ? 'g' : unit);

/** How much of the other food stands in for an amount; null when no density or piece weight tells. */
export function substituteAmount(amount: Amount, row: Substitution): Amount | null {
  const [from, to] = [ingredient(row.from), ingredient(row.to)];
  if (from === undefined || to === undefined) return null;
  const between = row.by === 'mass' ? 'g' : 'ml';
  const direct = row.by === 'mass' ? 'mass' : 'volume';
  if (dimensionOf(amount.unit) === direct) return { amount: amount.amount.times(row.ratio), unit: amount.unit };
  const there = convertFood(amount, between, from);
  return there === null ? null : convertFood({ amount: there.amount.times(row.ratio), unit: between }, unitFor(amount.unit, to), to);
}

type LineAmount = IngredientLine['amount'];

/** An amount as it is written into a line: six decimals, and never nothing. */
function lineAmount({ amount, unit }: Amount): LineAmount {
  const rounded = amount.round(decimals);
  return { ...amountText({ amount: rounded.gt(0) ? rounded : smallest, unit }) };
}

/** What the other food's line says for an amount; null where it cannot be worked out. */
function written(amount: LineAmount, row: Substitution): LineAmount | null {
  const swapped = substituteAmount(amountFrom(amount), row);
  return swapped === null ? null : lineAmount(swapped);
}

/** The amount of what stood there before: as it was written while the line has what the substitution gave, else changed since in the same proportion. */
function amountBefore(line: IngredientLine, { amount, gave }: NonNullable<IngredientLine['insteadOf']>): LineAmount {
  if (gave === undefined) return amount;
  const [now, then] = [convertFood(amountFrom(line.amount), gave.unit, ingredient(line.ingredient) ?? { gramsPerMl: null, gramsPer: {} }), amountFrom(gave)];
  if (now === null || then.amount.lte(0) || now.amount.eq(then.amount)) return amount;
  return lineAmount({ amount: new Big(amount.amount).times(now.amount).div(then.amount), unit: amount.unit });
}

function swapLine(line: IngredientLine, row: Substitution): IngredientLine | null {
  if (line.ingredient !== row.from) return line;
  const amount = written(line.amount, row);
  if (amount === null) return null;
  const { insteadOf, ...rest } = line;
  // Back where it began: nothing stands in for anything any more.
  if (insteadOf?.ingredient === row.to) return { ...rest, ingredient: row.to, amount: amountBefore(line, insteadOf) };
  const before = insteadOf ?? { ingredient: line.ingredient, amount: line.amount, gave: line.amount };
  const gave = before.gave === undefined ? null : written(before.gave, row);
  return { ...rest, ingredient: row.to, amount, insteadOf: { ...before, ...(gave === null ? {} : { gave }) } };
}

const withDose = (recipe: Recipe, from: string, to: string): Recipe =>
  (recipe.brewing?.doseIngredient === from && !recipe.ingredients.some((l) => l.ingredient === from) ? { ...recipe, brewing: { ...recipe.brewing, doseIngredient: to } } : recipe);

function swapRecipe(recipe: Recipe, row: Substitution): Recipe | null {
  if (!recipe.ingredients.some((l) => l.ingredient === row.from)) return recipe;
  const lines = recipe.ingredients.map((line) => swapLine(line, row));
  const known = lines.filter((l) => l !== null);
  return known.length < lines.length ? null : withDose({ ...recipe, ingredients: known }, row.from, row.to);
}

/** The kind of frying oil that is bought as this food; null when none is. */
export const oilKindOf = (food: string): string | null => fryingOils.find((o) => o.ingredient === food)?.id ?? null;

/** True when the pans are filled with this food. */
export const isFryingOil = (event: Event, food: string): boolean => fryingOil(event.kitchen.oilKind)?.ingredient === food;

function swapOil(event: Event, row: Substitution): Event | null {
  if (!isFryingOil(event, row.from)) return event;
  const kind = oilKindOf(row.to);
  if (kind === null) return null;
  const shopping = shoppingOf(event);
  const { oilBefore = event.kitchen.oilKind, ...rest } = shopping;
  const back = fryingOil(oilBefore)?.ingredient === row.to;
  return { ...event, kitchen: { ...event.kitchen, oilKind: back ? oilBefore : kind }, shopping: back ? rest : { ...rest, oilBefore } };
}

/**
 * The event with one food in place of another in every recipe of the menu and in the pans; each line keeps what stood there before. Recipes not
 * on the menu stay. Null when an amount cannot be worked out or the other food is no frying oil.
 */
export function swapped(event: Event, row: Substitution): Event | null {
  const onMenu = new Set(event.menu.dishes.map((d) => d.recipe));
  const recipes: Recipe[] = [];
  for (const recipe of event.recipes) {
    const after = onMenu.has(recipe.id) ? swapRecipe(recipe, row) : recipe;
    if (after === null) return null;
    recipes.push(after);
  }
  return swapOil({ ...event, recipes }, row);
}

/** What stands in for something else: the food now, and what it replaced. One entry for a pair. */
export function standIns(event: Event): readonly { readonly now: string; readonly before: string }[] {
  const lines = event.recipes.flatMap((r) => r.ingredients.flatMap((l) => (l.insteadOf === undefined ? [] : [{ now: l.ingredient, before: l.insteadOf.ingredient }])));
  const oil = shoppingOf(event).oilBefore;
  const [now, before] = [fryingOil(event.kitchen.oilKind)?.ingredient, oil === undefined ? undefined : fryingOil(oil)?.ingredient];
  const all = now === undefined || before === undefined ? lines : [...lines, { now, before }];
  return all.filter((a, i) => all.findIndex((b) => b.now === a.now && b.before === a.before) === i);
}

function putBackRecipe(recipe: Recipe, now: string, before: string): Recipe {
  if (!recipe.ingredients.some((l) => l.ingredient === now && l.insteadOf?.ingredient === before)) return recipe;
  const ingredients = recipe.ingredients.map((line): IngredientLine => {
    const { insteadOf, ...rest } = line;
    return line.ingredient === now && insteadOf?.ingredient === before ? { ...rest, ingredient: before, amount: amountBefore(line, insteadOf) } : line;
  });
  return withDose({ ...recipe, ingredients }, now, before);
}

/** The event with what stood there before: exactly as it was written, or in the proportion in which its line was changed since. */
export function putBack(event: Event, { now, before }: { readonly now: string; readonly before: string }): Event {
  const recipes = event.recipes.map((recipe) => putBackRecipe(recipe, now, before));
  const { oilBefore, ...shopping } = shoppingOf(event);
  if (oilBefore === undefined || fryingOil(oilBefore)?.ingredient !== before || !isFryingOil(event, now)) return { ...event, recipes };
  return { ...event, recipes, kitchen: { ...event.kitchen, oilKind: oilBefore }, shopping };
}
