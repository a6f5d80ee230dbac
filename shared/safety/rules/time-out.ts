import { isRice } from '../../menu';
import { safetyRule } from '../../reference';
import type { Level } from '../types';
import { holdingOf, worstOfEach, type Rule, type Subject, type Verdict } from '../rule';
import { hoursOut } from './standing';

/** Above this a room is hot and the two hours become one. Source: USDA advice, rule TC-02. */
const hotRoomC = 32;

function judgeOut(s: Subject, limitHours: number, applies: boolean, id: 'safety.say.TC-01' | 'safety.say.TC-02'): Verdict {
  if (!applies) return { hits: [] };
  const dishes = s.menu.dishes.filter((d) => d.recipe.needsTemperatureControl && d.recipe.frying === undefined && d.recipe.brewing === undefined && !isRice(d));
  const unknown = dishes.filter((d) => holdingOf(s, d) === undefined && d.firstServed !== null);
  const hits = dishes.filter((d) => holdingOf(s, d)?.place === 'counter').flatMap((d) => {
    const hours = hoursOut(s, d);
    return hours !== null && hours.value > limitHours ? [{ value: hours.value, unit: 'h', figure: hours, about: [d.id], message: { id, params: { dish: d.name, hours: hours.value } } } as const] : [];
  });
  return unknown.length === 0 ? { hits } : { hits, needs: { id: 'safety.needs.waits', params: { dishes: unknown.length, first: unknown[0]?.name ?? '' } } };
}

const rule = (id: 'TC-01' | 'TC-02', level: Level, applies: (s: Subject) => boolean): Rule => {
  const hours = safetyRule(id).limit ?? 0;
  return { id, level, title: { id: `safety.title.${id}` }, judge: (s) => judgeOut(s, hours, applies(s), `safety.say.${id}`) };
};

/** TC-01: two hours out at room temperature. */
export const timeOut: Rule = rule('TC-01', 'stop', (s) => s.event.kitchen.roomC <= hotRoomC);
/** TC-02: one hour out above 32 °C. */
export const timeOutHot: Rule = rule('TC-02', 'stop', (s) => s.event.kitchen.roomC > hotRoomC);

const friedHours = safetyRule('TC-06').limit ?? 0;

/** TC-06: fried pieces are eaten within two hours of leaving the oil unless kept at 60 °C; the worst batch of each dish is named. */
export const friedClock: Rule = {
  id: 'TC-06', level: 'stop', title: { id: 'safety.title.TC-06' },
  judge(s) {
    const late = s.frying.batches.map((b) => ({ batch: b, hours: (b.eatenTo - b.liftAt) / 60 })).filter((x) => {
      const holding = s.event.menu.dishes.find((d) => d.id === x.batch.dish)?.holding;
      const keptHot = holding?.place === 'hot' && (holding.temperatureC ?? s.event.kitchen.hotHoldC ?? 0) >= 60;
      return x.hours > friedHours && !keptHot;
    });
    return {
      hits: worstOfEach(late, (x) => x.batch.dish, (x) => x.hours).map(({ batch, hours }) => ({
        value: hours, unit: 'h', about: [batch.dish],
        message: { id: 'safety.say.TC-06', params: { batch: batch.number, hours, by: batch.liftAt + friedHours * 60 } },
      })),
    };
  },
};
