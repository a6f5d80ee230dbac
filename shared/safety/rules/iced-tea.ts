import type { DishPlan } from '../../menu';
import { safetyRule } from '../../reference';
import { type Hit, type Rule, type Subject, worstOfEach } from '../rule';
import { hoursBetween } from './hours';

const teaHours = safetyRule('ED-07').limit ?? 0;
const isIcedTea = (d: DishPlan): boolean => d.recipe.brewing?.hot === false && d.recipe.ingredients.some((l) => /^(tea|coffee)-/.test(l.ingredient));

/** When the drink of a round was made: at its own steps where they make it ahead, else when it was ready. */
function madeAt(s: Subject, dish: DishPlan, round: Subject['drinks']['rounds'][number]): number {
  if (!round.madeAhead) return round.readyAt;
  const ends = s.day.tasks.filter((t) => t.kind === 'step' && t.dish === dish.id).map((t) => Number(t.end));
  return ends.length === 0 ? round.readyAt : Math.min(...ends);
}

/** From when each round was made to the last minute it is drunk from a flask: until the next fill, or until that flask is empty for the day. */
function ages(s: Subject): readonly { readonly dish: DishPlan; readonly from: number; readonly until: number }[] {
  return s.menu.dishes.filter(isIcedTea).flatMap((dish) => s.drinks.dispensers.filter((d) => d.drink === dish.id).flatMap((flask) => {
    const fills = s.drinks.fills.filter((f) => f.dispenser === flask.id).toSorted((a, b) => a.at - b.at);
    const last = flask.fromMinute + flask.litres.findLastIndex((l) => l > 0);
    return fills.flatMap((fill, i) => {
      const round = s.drinks.rounds.find((r) => r.number === fill.round);
      return round === undefined ? [] : [{ dish, from: madeAt(s, dish, round), until: fills[i + 1]?.at ?? last }];
    });
  }));
}

/** ED-07: tea or coffee to be drunk cold is brewed for one day of serving, eight hours. The oldest of each drink is named. */
export const icedTea: Rule = {
  id: 'ED-07', level: 'caution', title: { id: 'safety.title.ED-07' },
  judge: (s) => ({
    hits: worstOfEach(ages(s).filter((a) => a.until - a.from > teaHours * 60), (a) => a.dish.id, (a) => a.until - a.from).map(({ dish, from, until }): Hit => {
      const hours = hoursBetween(from, until);
      return { value: hours.value, unit: 'h', figure: hours, about: [dish.id], message: { id: 'safety.say.ED-07', params: { drink: dish.name, hours: hours.value, limit: teaHours } } };
    }),
  }),
};
