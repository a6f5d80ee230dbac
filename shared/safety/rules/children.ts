import { safetyRule } from '../../reference';
import { ingredientIds, type Rule } from '../rule';

/** CD-04: no honey, raw or cooked, for babies under one. Babies are counted from the waves; honey is looked for in every dish and drink. */
export const honey: Rule = {
  id: 'CD-04', level: 'stop', title: { id: 'safety.title.CD-04' },
  judge(s) {
    const babies = s.guests.waves.reduce((sum, w) => sum + w.counts.under1, 0);
    if (babies === 0) return { hits: [] };
    return {
      hits: s.menu.dishes.filter((d) => ingredientIds(d).includes('honey'))
        .map((d) => ({ value: babies, unit: 'people', limit: { value: 0, unit: 'people' }, about: [d.id], message: { id: 'safety.say.CD-04', params: { dish: d.name, babies, months: safetyRule('CD-04').limit ?? 12 } } })),
    };
  },
};
