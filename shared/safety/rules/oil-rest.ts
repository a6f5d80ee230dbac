import { safetyRule } from '../../reference';
import type { Rule, Subject } from '../rule';

const restHours = safetyRule('DF-14').limit ?? 0;

/** DF-14: oil stands at least four hours after the last batch before anybody moves or strains it. */
export const oilRest: Rule = {
  id: 'DF-14', level: 'stop', title: { id: 'safety.title.DF-14' },
  judge(s) {
    if (s.frying.sessions.length === 0) return { hits: [] };
    const hours = restOf(s);
    return { hits: hours < restHours && hours >= hotHours ? [{ value: hours, unit: 'h', about: s.frying.oil.map((o) => o.pan), message: { id: 'safety.say.DF-14', params: { hours } } }] : [] };
  },
};

const hotHours = safetyRule('DF-19').limit ?? 0;
/** DF-19: oil moved within the hour still burns deeply. What rests longer, but too short, is left to DF-14. */
export const oilHot: Rule = {
  id: 'DF-19', level: 'stop', title: { id: 'safety.title.DF-19' },
  judge(s) {
    if (s.frying.sessions.length === 0) return { hits: [] };
    const hours = restOf(s);
    return { hits: hours < hotHours ? [{ value: hours, unit: 'h', about: s.frying.oil.map((o) => o.pan), message: { id: 'safety.say.DF-19', params: { hours } } }] : [] };
  },
};

/** Hours the oil rests: as the household means to, or as the day plans it, the shorter. */
function restOf(s: Subject): number {
  const planned = s.day.tasks.filter((t) => t.kind === 'oilAway').map((away) => {
    const off = s.frying.sessions.filter((x) => away.station === undefined || x.station === away.station).map((x) => Number(x.heatOffAt));
    return (away.start - Math.max(...off)) / 60;
  }).filter(Number.isFinite);
  return Math.min(s.event.kitchen.oilRestHours, ...planned);
}
