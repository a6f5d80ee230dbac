import type { Frying } from '../event';
import type { DishPlan } from '../menu';
import type { Message } from '../words';
import type { Batch } from './types';

interface Fried {
  readonly dish: DishPlan;
  readonly frying: Frying;
}

/** What a dish leaves in the oil, from least to most harm: crumbs, then allergens, then its taste. What has no batter fits in between bowls and goes last of equals. */
const careOf = ({ dish, frying }: Fried): readonly number[] => [Number(frying.strongFlavour ?? false), dish.allergens.length, Number(frying.crumbly), Number(frying.bowlMinutes === null)];

/** Order of fried dishes by what they leave in the oil; of equals the menu's order stands. */
export function byOilCare(a: Fried, b: Fried): number {
  const [first, second] = [careOf(a), careOf(b)];
  const at = first.findIndex((n, i) => n !== second[i]);
  return at < 0 ? 0 : (first[at] ?? 0) - (second[at] ?? 0);
}

/**
 * What a cook must know where dishes share oil: for every pan, each dish that goes in after another whose crumbs, taste or allergens it then
 * carries. Once for each pair of dishes and pan, at the first such batch.
 */
export function oilCareNotes(batches: readonly Batch[], fried: readonly Fried[], panName: (id: string) => string): Message[] {
  const notes: Message[] = [];
  const byId = new Map(fried.map((f) => [f.dish.id, f]));
  for (const pan of new Set(batches.map((b) => b.pan))) {
    const before = new Set<string>();
    const said = new Set<string>();
    for (const b of batches.filter((x) => x.pan === pan)) {
      for (const id of before) {
        const [now, then] = [byId.get(b.dish), byId.get(id)];
        if (now === undefined || then === undefined || now === then || said.has(`${b.dish} ${id}`)) continue;
        said.add(`${b.dish} ${id}`);
        const params = { dish: now.dish.name, after: then.dish.name, at: Number(b.dropAt), pan: panName(pan) };
        if (then.dish.allergens.some((a) => !now.dish.allergens.includes(a))) notes.push({ id: 'frying.care.allergen', params });
        else if ((then.frying.strongFlavour ?? false) && !(now.frying.strongFlavour ?? false)) notes.push({ id: 'frying.care.taste', params });
        else if (then.frying.crumbly && !now.frying.crumbly) notes.push({ id: 'frying.care.crumbs', params });
      }
      before.add(b.dish);
    }
  }
  return notes;
}
