import { foodCalled } from '../../event';
import { ingredient } from '../../reference';
import { ingredientIds, type Hit, type Rule, type Subject } from '../rule';

const served = (s: Subject) => s.menu.dishes.filter((d) => d.portions.value > 0 && d.firstServed !== null && d.role !== 'water');

/** AL-08: the card of a dish says what is in it; where the table does not know an ingredient it can only say "not checked". */
export const cardComplete: Rule = {
  id: 'AL-08', level: 'warn', title: { id: 'safety.title.AL-08' },
  judge: (s) => ({
    hits: served(s).flatMap((d): readonly Hit[] => {
      const unknown = ingredientIds(d).filter((i) => ingredient(i) === undefined);
      const [first] = unknown;
      return first === undefined ? [] : [{ value: unknown.length, unit: '', limit: { value: 0, unit: '' }, about: [d.id], message: { id: 'safety.say.AL-08', params: { dish: d.name, ingredient: foodCalled(first, [d.recipe]), others: unknown.length - 1 } } }];
    }),
  }),
};

/** Sheet and column under which the printed cards keep what each dish contains (the sheets write it). */
const cards = { sheet: 'labels', column: 'allergens' } as const;
/** AL-09: a card that no longer says what is in its dish is printed again. Compared with the cards printed last. */
export const cardsCurrent: Rule = {
  id: 'AL-09', level: 'warn', title: { id: 'safety.title.AL-09' },
  judge(s) {
    const rows = s.event.issuedSheets.findLast((p) => p.sheet === cards.sheet && p.rows !== undefined)?.rows;
    if (rows === undefined) return { hits: [] };
    const stale = served(s).filter((d) => rows[d.id]?.[cards.column] !== d.allergens.join(' '));
    return { hits: stale.length === 0 ? [] : [{ value: stale.length, unit: 'dishes', limit: { value: 0, unit: 'dishes' }, about: stale.map((d) => d.id), message: { id: 'safety.say.AL-09', params: { dishes: stale.map((d) => d.name) } } }] };
  },
};
