import type { Origin } from '../../shared/figure';
import { sourceTitle } from '../../shared/reference';
import type { Speaker } from './speak';
import { documentStore } from './store';

/** Where an input comes from, in words. */
export function sourceWords(t: Speaker, origin: Origin): string {
  switch (origin.kind) {
    case 'entered': return t('part.fromEntry', { where: whereTo(documentStore.get()?.event, origin.path) });
    case 'table': return t('part.fromTable', { source: tableWords(origin.source) });
    case 'house': return t('part.fromHouse', { why: origin.why });
    case 'recipe': return t('part.fromRecipe', { recipe: documentStore.get()?.event.recipes.find((r) => r.id === origin.recipe)?.name ?? origin.recipe });
    case 'definition': return t('part.fromDefinition');
    case 'computed': return t.loose(origin.method);
  }
}

/** A source of the tables in words. */
export function tableWords(id: string): string {
  const found = sourceTitle(id);
  if (found === undefined) return id;
  const named = [found.title, found.publisher, found.year].filter((part) => part !== '').join(', ');
  return found.status === '' || named.includes(found.status) ? named : `${named} (${found.status})`;
}

/** The way to a field, its list items with the names the cook gave them: `guests.waves[0].from` is "Wave 1 (Late morning), from". */
function whereTo(event: unknown, path: string): { key: string; number?: number; name?: string }[] {
  let at: unknown = event;
  return [...path.matchAll(/([A-Za-z0-9_-]+)(?:\[(\d+)\])?/g)].map(([, key = '', place]) => {
    at = child(at, key);
    if (place === undefined) return { key };
    at = child(at, place);
    const name = child(at, 'name');
    return { key, number: Number(place) + 1, ...(typeof name === 'string' ? { name } : {}) };
  });
}

const child = (value: unknown, key: string): unknown => (typeof value === 'object' && value !== null ? Object.entries(value).find(([k]) => k === key)?.[1] : undefined);
