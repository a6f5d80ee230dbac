import type { BandId } from '../../event';
import { safetyRule } from '../../reference';
import type { Hit, Rule } from '../rule';
import { hottestCups, standMinutes } from './cup';

const scaldC = safetyRule('SC-03').limit ?? 0;
/** Children for whom a cup is cooled; from 13 they are handed a cup like an adult's (common practice, no source). */
const youngBands: readonly BandId[] = ['under1', 'age1to3', 'age4to6', 'age7to9', 'age10to12'];
const childC = safetyRule('CD-10').limit ?? 0;

/** SC-03: a drink is handed over at 71 °C or cooler, in the cup after pouring and standing. */
export const hotCup: Rule = {
  id: 'SC-03', level: 'warn', title: { id: 'safety.title.SC-03' },
  judge: (s) => ({
    hits: hottestCups(s).filter((c) => c.cup.value > scaldC).map(({ dispenser, dish, flaskC, cup }): Hit => ({
      value: cup.value, unit: 'degC', figure: cup, about: [dispenser.id, dish.id],
      message: { id: 'safety.say.SC-03', params: { drink: dish.name, celsius: cup.value, limit: scaldC, minutes: standMinutes(s.event, flaskC, scaldC) } },
    })),
  }),
};

/** CD-10: a child's hot drink is lukewarm, 43 °C or less. Judged for drinks of which children up to twelve have a share. */
export const childCup: Rule = {
  id: 'CD-10', level: 'warn', title: { id: 'safety.title.CD-10' },
  judge: (s) => ({
    hits: hottestCups(s).filter(({ dish, cup }) => cup.value > childC && youngBands.some((b) => dish.perBand[b] > 0 && s.guests.waves.some((w) => w.counts[b] > 0))).map(({ dispenser, dish, cup }): Hit => ({
      value: cup.value, unit: 'degC', figure: cup, about: [dispenser.id, dish.id], message: { id: 'safety.say.CD-10', params: { drink: dish.name, celsius: cup.value, limit: childC } },
    })),
  }),
};
