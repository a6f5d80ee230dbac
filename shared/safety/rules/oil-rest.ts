import { safetyRule } from '../../reference';
import type { Rule } from '../rule';

const restHours = safetyRule('DF-14').limit ?? 0;

/** DF-14: oil stands at least four hours after the last batch before anybody moves or strains it. */
export const oilRest: Rule = {
  id: 'DF-14', level: 'stop', title: { id: 'safety.title.DF-14' },
  judge(s) {
    if (s.frying.sessions.length === 0) return { hits: [] };
    const planned = s.day.tasks.filter((t) => t.kind === 'oilAway').map((away) => {
      const off = s.frying.sessions.filter((x) => away.station === undefined || x.station === away.station).map((x) => Number(x.heatOffAt));
      return (away.start - Math.max(...off)) / 60;
    }).filter(Number.isFinite);
    const hours = Math.min(s.event.kitchen.oilRestHours, ...planned);
    return { hits: hours < restHours ? [{ value: hours, unit: 'h', about: s.frying.oil.map((o) => o.pan), message: { id: 'safety.say.DF-14', params: { hours } } }] : [] };
  },
};
