import { eventSchema, type Event } from '../../../shared/event';
import { recompute, type Figure } from '../../../shared/figure';
import { planGuests } from '../../../shared/guests';
import { planMenu, type DishPlan, type MenuPlan } from '../../../shared/menu';

type Loose = Readonly<Record<string, unknown>>;

/** A recipe of one ingredient; `more` overrides. */
export const recipeOf = (id: string, role: string, more: Loose = {}): Loose => ({
  id, name: `Recipe ${id}`, role,
  yield: { amount: { amount: '1000', unit: 'g' }, portions: 10 },
  ingredients: [{ ingredient: 'basmati-rice', amount: { amount: '500', unit: 'g' } }],
  ...more,
});

/** A recipe counted in pieces. */
export const piecesOf = (id: string, role: string, more: Loose = {}): Loose =>
  recipeOf(id, role, { yield: { amount: { amount: '50', unit: 'piece' }, portions: 10 }, ...more });

/** A drink by the litre. */
export const drinkOf = (id: string, hot: boolean, caffeinated: boolean, more: Loose = {}): Loose => ({
  id, name: `Drink ${id}`, role: hot ? 'hotDrink' : 'coldDrink',
  yield: { amount: { amount: '1', unit: 'L' }, portions: 6 },
  ingredients: [{ ingredient: 'water', amount: { amount: '1', unit: 'L' } }],
  brewing: { method: 'cold', hot, caffeinated, cupMl: 150 },
  ...more,
});

/** An event with these recipes, all on the menu unless `dishes` says otherwise. */
export function menuEvent(recipes: readonly Loose[], waves: readonly Loose[], more: Loose = {}, dishes?: readonly Loose[]): Event {
  return eventSchema.parse({
    format: 'brimful-event/1', id: 'test', title: 'Test', day: '2026-12-12', opensAt: 660, closesAt: 1200,
    recipes,
    menu: { dishes: dishes ?? recipes.map((r) => ({ id: `d-${String(r['id'])}`, recipe: r['id'] })) },
    ...more,
    guests: {
      waves: waves.map((w, i) => ({ id: `w${i + 1}`, name: `Wave ${i + 1}`, from: 720, to: 780, stay: { shortest: 60, usual: 90, longest: 120 }, ...w })),
      ...(more['guests'] === undefined ? {} : Object(more['guests'])),
    },
  });
}

/** A wave of adults who stay 90 minutes, the measure of a portion. */
export const adults = (n: number, more: Loose = {}): Loose => ({ counts: { adult: n }, stay: { shortest: 90, usual: 90, longest: 90 }, ...more });

export const menuOf = (event: Event): MenuPlan => planMenu(event, planGuests(event));

/** The plan of one dish. @throws when it is not there. */
export function dish(menu: MenuPlan, id: string): DishPlan {
  const found = menu.dishes.find((d) => d.id === id);
  if (found === undefined) throw new Error(`no dish ${id}`);
  return found;
}

export const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);

/** Every figure under a figure, itself included. */
export function allFigures(f: Figure): Figure[] {
  return [f, ...f.working().terms.flatMap((t) => (t.figure === undefined ? [] : allFigures(t.figure)))];
}

/** Faults of a figure's whole tree; empty when every working recomputes, has inputs, and every leaf has an origin. */
export function faultsOf(f: Figure, ruleIds: readonly string[]): string[] {
  return allFigures(f).flatMap((one) => {
    const working = one.working();
    const again = recompute(working);
    const faults: string[] = [];
    if (working.terms.length === 0) faults.push(`${working.rule}: no inputs`);
    if (!ruleIds.includes(working.rule)) faults.push(`${working.rule}: not registered`);
    if (Math.abs(again - one.value) > 1e-9 * Math.max(1, Math.abs(one.value))) faults.push(`${working.rule}: ${one.value} shown, ${again} recomputed`);
    for (const t of working.terms) {
      if ((t.origin === undefined) === (t.figure === undefined)) faults.push(`${working.rule}.${t.key}: needs an origin or a figure`);
      if (t.figure !== undefined && t.figure.value !== t.value) faults.push(`${working.rule}.${t.key}: differs from its figure`);
    }
    return faults;
  });
}
