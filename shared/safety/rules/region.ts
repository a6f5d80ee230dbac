import { safetyRule } from '../../reference';
import { usGroups } from '../profile';
import type { Hit, Rule } from '../rule';

/** AL-02: labels in the United States name nine groups of allergens, in Europe fourteen: what a guest listed may stand on no label. */
export const labelGroups: Rule = {
  id: 'AL-02', level: 'warn', title: { id: 'safety.title.AL-02' },
  judge: (s) => ({
    hits: s.event.preferences.safetyProfile !== 'us' ? [] : s.event.guests.allergies.filter((a) => !usGroups.includes(a.allergen)).map((a): Hit => ({
      value: usGroups.length, unit: 'groups', about: [], message: { id: 'safety.say.AL-02', params: { allergen: a.allergen, people: a.people } },
    })),
  }),
};

const plugAmps = safetyRule('EL-04').limit ?? 0;
/** Mains of the United Kingdom (from memory, rule EL-04). */
const ukVolts = 230;
/** EL-04: a plug in the United Kingdom carries 13 amperes; what takes more needs wiring of its own. */
export const ukPlug: Rule = {
  id: 'EL-04', level: 'caution', title: { id: 'safety.title.EL-04' },
  judge: (s) => ({
    hits: s.event.preferences.safetyProfile !== 'uk' ? [] : s.event.kitchen.burners
      .filter((b) => (b.kind === 'electric' || b.kind === 'induction') && b.ratedW > plugAmps * ukVolts)
      .map((b): Hit => ({ value: b.ratedW, unit: 'W', limit: { value: plugAmps * ukVolts, unit: 'W' }, about: [b.id], message: { id: 'safety.say.EL-04', params: { burner: b.name, watts: b.ratedW, limit: plugAmps * ukVolts } } })),
  }),
};

/**
 * CX-05: with guests at higher risk the strictest limits of all sets of rules hold. Asked, never inferred; once asked it is in order, for the rules
 * that judge hot and cold food take those limits by themselves (`limitsOf`).
 */
export const higherRisk: Rule = {
  id: 'CX-05', level: 'caution', title: { id: 'safety.title.CX-05' },
  judge: (s) => (s.event.guests.higherRisk === null ? { hits: [], needs: { id: 'safety.needs.higherRisk' } } : { hits: [] }),
};
