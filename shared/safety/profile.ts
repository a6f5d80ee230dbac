import type { Event } from '../event';
import { safetyRule } from '../reference';

/**
 * Limits of a set of rules, in °C. `hotTarget` and `coldTarget` are where a warning begins, `hotStop` and `coldStop` where food must not wait.
 * What the sets differ in and the rules know of: holding temperatures (HH, CH, PR-07, ED-03a), groups of allergens on labels (AL-02) and the plug (EL-04).
 */
export interface ProfileLimits {
  readonly hotStop: number;
  readonly hotTarget: number;
  readonly coldStop: number;
  readonly coldTarget: number;
}

const limit = (id: string): number => safetyRule(id).limit ?? 0;
const code = { hot: limit('HH-01'), cold: limit('CH-01') };
const household = { hot: limit('HH-02'), cold: limit('CH-02') };
const uk = { hot: limit('HH-03'), cold: limit('CH-03') };

const profiles: Readonly<Record<Event['preferences']['safetyProfile'], ProfileLimits>> = {
  household: { hotStop: code.hot, hotTarget: household.hot, coldStop: code.cold, coldTarget: household.cold },
  us: { hotStop: code.hot, hotTarget: code.hot, coldStop: code.cold, coldTarget: code.cold },
  // The law allows 8 °C; 5 °C is good practice (from memory).
  uk: { hotStop: code.hot, hotTarget: uk.hot, coldStop: uk.cold, coldTarget: code.cold },
  // The Union's law sets no degrees; Germany's risk assessors ask for 60 °C (rule HH-02), and 5 °C is the usual practice.
  eu: { hotStop: code.hot, hotTarget: household.hot, coldStop: code.cold, coldTarget: code.cold },
};

/** Limits in force: those of the chosen set; with guests at higher risk the strictest of all sets (rule CX-05). */
export function limitsOf(event: Event): ProfileLimits {
  if (event.guests.higherRisk !== true) return profiles[event.preferences.safetyProfile];
  const all = Object.values(profiles);
  return {
    hotStop: Math.max(...all.map((p) => p.hotStop)), hotTarget: Math.max(...all.map((p) => p.hotTarget)),
    coldStop: Math.min(...all.map((p) => p.coldStop)), coldTarget: Math.min(...all.map((p) => p.coldTarget)),
  };
}

/** Allergen groups a label in the United States has to name (FALCPA 2004, FASTER Act 2021; rule AL-01); gluten stands for wheat. */
export const usGroups: readonly string[] = ['milk', 'eggs', 'fish', 'crustaceans', 'nuts', 'peanuts', 'gluten', 'soya', 'sesame'];
