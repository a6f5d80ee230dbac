import { safetyRule } from '../../reference';
import { worstOfEach, type Rule } from '../rule';

const litresLimit = safetyRule('LF-06').limit ?? 0;

/** LF-06: one person lifts a pot of at most about nine litres at stove height. Judged for every brewing pot as it is filled. */
export const potLift: Rule = {
  id: 'LF-06', level: 'warn', title: { id: 'safety.title.LF-06' },
  judge(s) {
    const heavy = s.drinks.rounds.filter((r) => !r.inUrn).map((r) => ({ pot: r.pot, drink: r.drink, litres: Math.max(r.litres, r.waterLitres.value) })).filter((r) => r.litres > litresLimit);
    return {
      hits: worstOfEach(heavy, (r) => r.pot, (r) => r.litres).map((r) => ({
        value: r.litres, unit: 'L', about: [r.pot, r.drink],
        message: { id: 'safety.say.LF-06', params: { pot: s.event.kitchen.pots.find((p) => p.id === r.pot)?.name ?? r.pot, litres: r.litres, limit: litresLimit } },
      })),
    };
  },
};
