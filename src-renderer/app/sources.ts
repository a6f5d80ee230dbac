import type { Origin } from '../../shared/figure';
import { sourceTitle } from '../../shared/reference';
import type { Speaker } from './speak';

/** Where an input comes from, in words. */
export function sourceWords(t: Speaker, origin: Origin): string {
  switch (origin.kind) {
    case 'entered': return t('part.fromEntry', { field: fieldWords(t, origin.path) });
    case 'table': return t('part.fromTable', { source: tableWords(origin.source) });
    case 'house': return t('part.fromHouse', { why: origin.why });
    case 'recipe': return t('part.fromRecipe', { recipe: origin.recipe });
    case 'definition': return t('part.fromDefinition');
  }
}

function tableWords(id: string): string {
  const found = sourceTitle(id);
  if (found === undefined) return id;
  const named = [found.title, found.publisher, found.year].filter((part) => part !== '').join(', ');
  return found.status === '' || named.includes(found.status) ? named : `${named} (${found.status})`;
}

/** A field's path as words: the last name in it, "guests.waves[0].counts.adult" becoming "guests, waves 1, counts, adult". */
function fieldWords(t: Speaker, path: string): string {
  return path.split('.').map((step) => {
    const [, name = step, at] = /^([A-Za-z]+)(?:\[(\d+)\])?$/.exec(step) ?? [];
    const word = t.loose(`field.${name}`);
    const plainWord = word.startsWith('field.') ? name.replace(/([A-Z])/g, ' $1').toLowerCase() : word;
    return at === undefined ? plainWord : `${plainWord} ${Number(at) + 1}`;
  }).join(', ');
}
