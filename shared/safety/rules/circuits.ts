import { safetyRule } from '../../reference';
import type { Rule } from '../rule';

const share = safetyRule('EL-01').limit ?? 0;
/** A load of three hours or more is a long one (rule EL-01). */
const longMinutes = 180;

/** EL-01: what runs for three hours or more takes at most 80 % of its circuit. All appliances of a circuit are taken to run together. */
export const circuitLoad: Rule = {
  id: 'EL-01', level: 'stop', title: { id: 'safety.title.EL-01' },
  judge(s) {
    const { burners, circuits, dispensers } = s.event.kitchen;
    const urns = dispensers.flatMap((d) => (d.brewsW === undefined ? [] : [{ name: d.name, ratedW: d.brewsW, circuit: d.circuit }]));
    const electric = [...burners.filter((b) => b.kind === 'electric' || b.kind === 'induction'), ...urns];
    const loose = [...electric.filter((b) => !circuits.some((c) => c.id === b.circuit)), ...dispensers.filter((d) => d.insulation === 'heated' && d.brewsW === undefined)];
    const needs = loose.length === 0 ? {} : { needs: { id: 'safety.needs.circuit', params: { appliance: loose[0]?.name ?? '' } } as const };
    if (s.event.closesAt - s.event.opensAt < longMinutes) return { hits: [], ...needs };
    return {
      ...needs,
      hits: circuits.flatMap((c) => {
        const watts = c.otherWatts + electric.filter((b) => b.circuit === c.id).reduce((sum, b) => sum + b.ratedW, 0);
        const limit = share * c.volts * c.amps;
        return watts > limit ? [{ value: watts, unit: 'W', limit: { value: limit, unit: 'W' }, about: [c.id], message: { id: 'safety.say.EL-01', params: { circuit: c.name, watts, limit } } } as const] : [];
      }),
    };
  },
};
