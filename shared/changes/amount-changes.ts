import type { DishPlan } from '../menu';
import type { Plan } from '../plan';
import { countChange, relative, type Change } from './change';

const unmet = (plan: Plan): number => plan.frying.served.reduce((sum, s) => sum + s.unmet.reduce((a, b) => a + b, 0), 0);

function portionChange(then: DishPlan, now: DishPlan): Change[] {
  const id = now.servedAs === 'piece' ? 'change.portions.piece' : now.servedAs === 'cup' ? 'change.portions.cup' : 'change.portions.portion';
  return countChange(now.id, then.portions.value, now.portions.value, (p) => ({ id, params: { ...p, dish: now.name } }));
}

function dishChanges(before: Plan, after: Plan): Change[] {
  const had = new Map(before.menu.dishes.map((d) => [d.id, d]));
  const has = new Set(after.menu.dishes.map((d) => d.id));
  return [
    ...after.menu.dishes.flatMap((now): Change[] => {
      const then = had.get(now.id);
      if (then !== undefined) return portionChange(then, now);
      return [{ kind: 'amounts', effect: 'new', message: { id: 'change.dish.new', params: { dish: now.name } }, before: null, after: now.portions.value, about: now.id, size: 1 }];
    }),
    ...before.menu.dishes.filter((d) => !has.has(d.id)).map((then): Change =>
      ({ kind: 'amounts', effect: 'gone', message: { id: 'change.dish.gone', params: { dish: then.name } }, before: then.portions.value, after: null, about: then.id, size: 1 })),
  ];
}

function roundChanges(before: Plan, after: Plan): Change[] {
  return after.drinks.totals.flatMap(({ drink, rounds }) => {
    const then = before.drinks.totals.find((t) => t.drink === drink);
    const name = after.menu.dishes.find((d) => d.id === drink)?.name ?? drink;
    return then === undefined ? [] : countChange(drink, then.rounds.value, rounds.value, (p) => ({ id: 'change.rounds', params: { ...p, drink: name } }));
  });
}

/** One batch or bowl more is another turn at the pan: it counts more than its share of the day's number. Our own choice. */
const batchWeight = 10;

/** Half a step of the first decimal, kilograms and litres: less shows the same number. */
const shownTenths = (value: number): number => Math.round(value * 10) / 10;

function measureChange(about: string, before: number, after: number, message: (p: { before: number; after: number }) => Change['message']): Change[] {
  const [b, a] = [shownTenths(before), shownTenths(after)];
  return a === b ? [] : [{ kind: 'amounts', effect: a > b ? 'more' : 'fewer', message: message({ before: b, after: a }), before: b, after: a, about, size: relative(b, a) }];
}

function brewedChanges(before: Plan, after: Plan): Change[] {
  return after.drinks.totals.flatMap(({ drink, brewed }) => {
    const then = before.drinks.totals.find((t) => t.drink === drink);
    const name = after.menu.dishes.find((d) => d.id === drink)?.name ?? drink;
    return then === undefined ? [] : measureChange(drink, then.brewed.value, brewed.value, (p) => ({ id: 'change.brewed', params: { ...p, drink: name } }));
  });
}

function costChange(before: Plan, after: Plan): Change[] {
  const [then, now] = [before.buying.cost, after.buying.cost];
  if (then === null || now === null || Number(then).toFixed(2) === Number(now).toFixed(2)) return [];
  return [{ kind: 'amounts', effect: Number(now) > Number(then) ? 'more' : 'fewer', message: { id: 'change.cost', params: { before: then, after: now } }, before: then, after: now, about: 'cost', size: relative(Number(then), Number(now)) }];
}

/** What is more, fewer, new or gone: guests, portions, batches, bowls, batter, rounds, drinks, money. Differences that no shown number tells are none. */
export function amountChanges(before: Plan, after: Plan): Change[] {
  return [
    // The cook knows the headcount she just set: it counts less among the largest.
    ...countChange('adults', before.guests.adults.value, after.guests.adults.value, (params) => ({ id: 'change.adults', params }), 0.1),
    ...countChange('children', before.guests.children.value, after.guests.children.value, (params) => ({ id: 'change.children', params }), 0.1),
    ...countChange('unmet', unmet(before), unmet(after), (params) => ({ id: 'change.unmet', params }), 1.5),
    ...dishChanges(before, after),
    ...countChange('batches', before.frying.batches.length, after.frying.batches.length, (params) => ({ id: 'change.batches', params }), batchWeight),
    ...countChange('bowls', before.frying.bowls.length, after.frying.bowls.length, (params) => ({ id: 'change.bowls', params }), batchWeight),
    ...measureChange('batter', before.frying.batterKg.value, after.frying.batterKg.value, (params) => ({ id: 'change.batter', params })),
    ...roundChanges(before, after),
    ...brewedChanges(before, after),
    ...costChange(before, after),
  ];
}
