import type { Rule } from '../rule';
import { factRule, fries, yesNo } from './facts';

/** CX-01: a paid, public or regular event is more than a private party. */
export const occasion: Rule = factRule({ id: 'CX-01', level: 'warn', title: { id: 'safety.title.CX-01' }, fact: 'occasion', applies: (s) => s.menu.dishes.some((d) => d.firstServed !== null), judge: (o) => (o === 'private' ? null : { ...yesNo(true), about: [], message: { id: 'safety.say.CX-01' } }) });
/** CX-02: who brings food says how long and how hot or cold it may wait. */
export const caterer: Rule = factRule({ id: 'CX-02', level: 'caution', title: { id: 'safety.title.CX-02' }, fact: 'caterer', applies: (s) => s.menu.dishes.some((d) => d.firstServed !== null), judge: (c) => (c === 'uninstructed' ? { ...yesNo(true), about: [], message: { id: 'safety.say.CX-02' } } : null) });
/** CX-03: halls and parks have fire rules of their own. */
export const venue: Rule = factRule({ id: 'CX-03', level: 'warn', title: { id: 'safety.title.CX-03' }, fact: 'venue', applies: fries, judge: (v) => (v === 'home' ? null : { ...yesNo(true), about: [], message: { id: 'safety.say.CX-03' } }) });
/** AL-10: with an allergy on the list the emergency card has its address and number. */
export const emergencyKnown: Rule = {
  id: 'AL-10', level: 'caution', title: { id: 'safety.title.AL-10' },
  judge(s) {
    if (s.event.guests.allergies.length === 0) return { hits: [] };
    const missing = [s.event.precautions?.address, s.event.precautions?.emergencyNumber].filter((x) => x === undefined || x === '').length;
    return { hits: missing === 0 ? [] : [{ value: missing, unit: '', limit: { value: 0, unit: '' }, about: [], message: { id: 'safety.say.AL-10' } }] };
  },
};
