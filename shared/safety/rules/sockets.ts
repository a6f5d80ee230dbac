import type { Message } from '../../words';
import type { Hit, Rule, Subject } from '../rule';
import { factRule, yesNo } from './facts';

interface Appliance { readonly id: string; readonly name: string; readonly watts: number; readonly circuit: string | undefined; readonly outdoor: boolean }
const appliances = (s: Subject): readonly Appliance[] => [
  ...s.event.kitchen.burners.filter((b) => b.kind === 'electric' || b.kind === 'induction').map((b) => ({ id: b.id, name: b.name, watts: b.ratedW, circuit: b.circuit, outdoor: b.place === 'outdoor' })),
  ...s.event.kitchen.dispensers.flatMap((d) => (d.brewsW === undefined ? [] : [{ id: d.id, name: d.name, watts: d.brewsW, circuit: d.circuit, outdoor: false }])),
];

/** A single appliance on a plug takes 80 % of its circuit at most (rule EL-02, NEC 210.23). */
const single = 0.8;

/** An appliance that is on no circuit the kitchen names: what it shares its circuit with is not known. */
function onNoCircuit(s: Subject): { readonly needs?: Message } {
  const loose = appliances(s).find((a) => !s.event.kitchen.circuits.some((c) => c.id === a.circuit));
  return loose === undefined ? {} : { needs: { id: 'safety.needs.circuit', params: { appliance: loose.name } } };
}

/** EL-02: what runs together is no more than the circuit carries, and one appliance no more than 80 % of it. */
export const fullCircuit: Rule = {
  id: 'EL-02', level: 'stop', title: { id: 'safety.title.EL-02' },
  judge: (s) => ({
    ...onNoCircuit(s),
    hits: s.event.kitchen.circuits.flatMap((c): readonly Hit[] => {
      const own = appliances(s).filter((a) => a.circuit === c.id);
      const full = c.volts * c.amps;
      const watts = c.otherWatts + own.reduce((sum, a) => sum + a.watts, 0);
      if (watts > full) return [{ value: watts, unit: 'W', limit: { value: full, unit: 'W' }, about: [c.id], message: { id: 'safety.say.EL-02', params: { circuit: c.name, watts, limit: full } } }];
      return own.filter((a) => a.watts > single * full).map((a) => ({ value: a.watts, unit: 'W', limit: { value: single * full, unit: 'W' }, about: [c.id, a.id], message: { id: 'safety.say.EL-02.one', params: { appliance: a.name, circuit: c.name, watts: a.watts, limit: single * full } } }));
    }),
  }),
};

/** EL-03: appliances that heat are plugged straight into the wall. */
export const extensionCord: Rule = factRule({
  id: 'EL-03', level: 'warn', title: { id: 'safety.title.EL-03' }, fact: 'extensionCord', applies: (s) => appliances(s).length > 0,
  judge: (on, s) => (on ? { ...yesNo(true), about: appliances(s).map((a) => a.id), message: { id: 'safety.say.EL-03' } } : null),
});

/** EL-05: sockets outdoors cut off by themselves. */
export const protectedSocket: Rule = factRule({
  id: 'EL-05', level: 'warn', title: { id: 'safety.title.EL-05' }, fact: 'protectedSockets', applies: (s) => appliances(s).some((a) => a.outdoor),
  judge: (safe, s) => (safe ? null : { ...yesNo(false), about: appliances(s).filter((a) => a.outdoor).map((a) => a.id), message: { id: 'safety.say.EL-05' } }),
});
