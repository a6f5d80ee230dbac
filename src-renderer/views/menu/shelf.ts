import { useEffect, useState } from 'react';
import { parseEvent, type Recipe } from '../../../shared/event';
import { call } from '../../bridge';

async function loadShelf(): Promise<readonly Recipe[]> {
  const demos = await call('events.demos', {});
  if (!demos.ok) return [];
  const texts = await Promise.all(demos.value.map(({ id }) => call('events.openDemo', { id })));
  const found = new Map<string, Recipe>();
  for (const answer of texts) {
    const parsed = answer.ok ? parseEvent(answer.value.text) : null;
    if (parsed?.ok === true) for (const recipe of parsed.event.recipes) if (!found.has(recipe.id)) found.set(recipe.id, recipe);
  }
  return [...found.values()].sort((a, b) => (a.name < b.name ? -1 : 1));
}

let loading: Promise<readonly Recipe[]> | null = null;

/** Recipes that come with the program, in the order of their names. A dish made from one copies it into the event. */
export function useShelf(): readonly Recipe[] {
  const [recipes, setRecipes] = useState<readonly Recipe[]>([]);
  useEffect(() => {
    loading ??= loadShelf();
    void loading.then(setRecipes);
  }, []);
  return recipes;
}
