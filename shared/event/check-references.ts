import { whereOf } from './where';
import { pathText, type EventProblem, type FieldPath } from './problem';
import { shoppingOf } from './schema/buying';
import { dayOf } from './schema/day';
import type { Event } from './schema/event';

interface HasId { readonly id: string }

function twice(event: Event, path: FieldPath, list: readonly HasId[]): EventProblem[] {
  const seen = new Set<string>();
  return list.flatMap(({ id }, at) => {
    const again = seen.has(id);
    seen.add(id);
    const here = [...path, at, 'id'];
    return again ? [{ path: pathText(here), message: { id: 'event.twice', params: { where: whereOf(event, here), id } } } as const] : [];
  });
}

/** Problem when `id` is in use but not in the list `among`. */
function notThere(event: Event, path: FieldPath, id: string | undefined, among: string, known: ReadonlySet<string>): EventProblem[] {
  if (id === undefined || known.has(id)) return [];
  return [{ path: pathText(path), message: { id: 'event.notThere', params: { where: whereOf(event, path), id, among } } }];
}

const ids = (list: readonly HasId[]): ReadonlySet<string> => new Set(list.map((item) => item.id));

/** Names used twice in one list. */
export function checkUnique(event: Event): EventProblem[] {
  const { guests, menu, recipes, kitchen, people } = event;
  return [
    ...twice(event, ['guests', 'waves'], guests.waves),
    ...twice(event, ['menu', 'dishes'], menu.dishes),
    ...twice(event, ['recipes'], recipes),
    ...recipes.flatMap((recipe, at) => twice(event, ['recipes', at, 'steps'], recipe.steps)),
    ...twice(event, ['kitchen', 'pans'], kitchen.pans),
    ...twice(event, ['kitchen', 'burners'], kitchen.burners),
    ...twice(event, ['kitchen', 'pots'], kitchen.pots),
    ...twice(event, ['kitchen', 'dispensers'], kitchen.dispensers),
    ...twice(event, ['kitchen', 'stations'], kitchen.stations),
    ...twice(event, ['kitchen', 'circuits'], kitchen.circuits),
    ...twice(event, ['kitchen', 'cylinders'], kitchen.cylinders),
    ...twice(event, ['people'], people),
    ...twice(event, ['dayJobs', 'ownJobs'], dayOf(event).ownJobs),
    ...twice(event, ['shopping', 'ownLines'], shoppingOf(event).ownLines),
    ...twice(event, ['shopping', 'borrowed'], shoppingOf(event).borrowed),
  ];
}

/** References to parts the event does not have. */
export function checkReferences(event: Event): EventProblem[] {
  const { menu, recipes, kitchen } = event;
  const [recipeIds, dishIds, panIds, burnerIds, circuitIds] = [ids(recipes), ids(menu.dishes), ids(kitchen.pans), ids(kitchen.burners), ids(kitchen.circuits)];
  return [
    ...menu.dishes.flatMap((d, at) => notThere(event, ['menu', 'dishes', at, 'recipe'], d.recipe, 'recipes', recipeIds)),
    ...recipes.flatMap((recipe, at) => [
      ...recipe.steps.flatMap((step, s) => step.after.flatMap((id, a) => notThere(event, ['recipes', at, 'steps', s, 'after', a], id, 'steps', ids(recipe.steps)))),
      ...notThere(event, ['recipes', at, 'brewing', 'doseIngredient'], recipe.brewing?.doseIngredient, 'ingredients', new Set(recipe.ingredients.map((line) => line.ingredient))),
    ]),
    ...kitchen.pans.flatMap((pan, at) => notThere(event, ['kitchen', 'pans', at, 'burner'], pan.burner, 'burners', burnerIds)),
    ...kitchen.burners.flatMap((burner, at) => notThere(event, ['kitchen', 'burners', at, 'circuit'], burner.circuit, 'circuits', circuitIds)),
    ...kitchen.dispensers.flatMap((d, at) => notThere(event, ['kitchen', 'dispensers', at, 'dish'], d.dish, 'dishes', dishIds)),
    ...kitchen.stations.flatMap((station, at) => [
      ...station.pans.flatMap((id, p) => notThere(event, ['kitchen', 'stations', at, 'pans', p], id, 'pans', panIds)),
      ...station.dishes.flatMap((id, d) => notThere(event, ['kitchen', 'stations', at, 'dishes', d], id, 'dishes', dishIds)),
    ]),
  ];
}
