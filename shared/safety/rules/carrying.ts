import { computed, entered, figure, most, plus, worked, type Figure } from '../../figure';
import { safetyRule } from '../../reference';
import { worstOfEach, type Hit, type Rule, type Subject } from '../rule';
import { factRule, hotDrinks, needsFact } from './facts';

/**
 * Recommended weight for one person lifting a pot from the stove, kg: 23 kg times what the reach (hands 40 cm from the ankles), the height of the
 * hands (90 cm) and a turn of 30 degrees leave of it. Source: NIOSH 94-110, rule LF-01; one lift now and then, good handles, no change of height.
 */
export const loneLiftKg = 23 * (25 / 40) * (1 - 0.003 * Math.abs(90 - 75)) * (1 - 0.0032 * 30);
/** More than this alone is a stop whatever the reach (rule LF-01). */
const mostKg = 23;

interface Lift { readonly pot: string; readonly name: string; readonly drink: string; readonly weight: Figure; readonly kg: number }
/** Pots of the day at their fullest, with their own weight; a litre of drink weighs a kilogram. */
function lifts(s: Subject): readonly Lift[] {
  const all = s.drinks.rounds.filter((r) => !r.inUrn).map((r) => {
    const pot = s.event.kitchen.pots.find((p) => p.id === r.pot);
    const empty = pot?.massKg ?? 0;
    const kg = Math.max(r.litres, r.waterLitres.value) + empty;
    const weight = figure(kg, 'kg', () => ({
      rule: 'safety.potWeight',
      terms: [computed('drink', { word: 'safety.term.drink' }, r.litres, 'L', 'safety.method.round'), worked('water', { word: 'safety.term.water' }, r.waterLitres), entered('pot', { word: 'safety.term.pot' }, empty, 'kg', `kitchen.pots.${r.pot}.massKg`)],
      sum: plus(most('drink', 'water'), 'pot'),
    }));
    return { pot: r.pot, name: pot?.name ?? r.pot, drink: r.drink, weight, kg };
  });
  return worstOfEach(all, (l) => l.pot, (l) => l.kg);
}
const hit = (l: Lift, limit: number, id: 'safety.say.LF-01a' | 'safety.say.LF-01b' | 'safety.say.LF-04'): Hit => ({ value: l.kg, unit: 'kg', figure: l.weight, limit: { value: limit, unit: 'kg' }, about: [l.pot, l.drink], message: { id, params: { pot: l.name, kg: l.kg, limit } } });
const tooMuch = (l: Lift): boolean => l.kg > (safetyRule('LF-01b').limit ?? 2) * loneLiftKg || l.kg > mostKg;

/** LF-01a: a pot heavier than one person should lift. */
export const heavyPot: Rule = {
  id: 'LF-01a', level: 'warn', title: { id: 'safety.title.LF-01a' },
  judge: (s) => ({ hits: lifts(s).filter((l) => l.kg > loneLiftKg && !tooMuch(l)).map((l) => hit(l, loneLiftKg, 'safety.say.LF-01a')) }),
};
/** LF-01b: a pot of more than 23 kg, or twice what one person should lift. */
export const muchTooHeavy: Rule = {
  id: 'LF-01b', level: 'stop', title: { id: 'safety.title.LF-01b' },
  judge: (s) => ({ hits: lifts(s).filter(tooMuch).map((l) => hit(l, Math.min(mostKg, 2 * loneLiftKg), 'safety.say.LF-01b')) }),
};

const teamShare = safetyRule('LF-04').limit ?? 0;
/** LF-04: two lift no more than two thirds of what each could alone. Asked for when a pot is too heavy for one. */
export const teamLift: Rule = {
  id: 'LF-04', level: 'warn', title: { id: 'safety.title.LF-04' },
  judge(s) {
    const heavy = lifts(s).filter((l) => l.kg > loneLiftKg);
    const lifters = s.event.precautions?.lifters;
    if (heavy.length === 0 || lifters === 1) return { hits: [] };
    if (lifters === undefined) return { hits: [], needs: needsFact('lifters') };
    const limit = teamShare * lifters * loneLiftKg;
    return { hits: heavy.filter((l) => l.kg > limit).map((l) => hit(l, limit, 'safety.say.LF-04')) };
  },
};

/** Hot liquid is carried three metres at most (rule LF-02); any load ten (rule LF-07). */
const hotCarryM = 3;
/** LF-02: a pot of hot drink is not carried far, nor over steps. */
export const hotCarry: Rule = {
  id: 'LF-02', level: 'warn', title: { id: 'safety.title.LF-02' },
  judge(s) {
    if (!hotDrinks(s)) return { hits: [] };
    const { carryMetres, carrySteps } = s.event.precautions ?? {};
    if (carrySteps === true) return { hits: [{ value: 1, unit: '', limit: { value: 0, unit: '' }, about: [], message: { id: 'safety.say.LF-02.steps' } }] };
    if (carryMetres === undefined) return { hits: [], needs: needsFact('carryMetres') };
    if (carryMetres > hotCarryM) return { hits: [{ value: carryMetres, unit: 'm', limit: { value: hotCarryM, unit: 'm' }, about: [], message: { id: 'safety.say.LF-02', params: { metres: carryMetres, limit: hotCarryM } } }] };
    return carrySteps === undefined ? { hits: [], needs: needsFact('carrySteps') } : { hits: [] };
  },
};
const farM = safetyRule('LF-07').limit ?? 0;
/** LF-07: no full pot is carried more than ten metres without a rest. */
export const farCarry: Rule = factRule({
  id: 'LF-07', level: 'warn', title: { id: 'safety.title.LF-07' }, fact: 'carryMetres', applies: (s) => s.drinks.rounds.length > 0,
  judge: (metres) => (metres > farM ? { value: metres, unit: 'm', about: [], message: { id: 'safety.say.LF-07', params: { metres, limit: farM } } } : null),
});

/** LF-05: a pan of hot oil is never moved. Judged by the job of putting the oil away and the oil's own cooling. */
export const hotOilMoved: Rule = {
  id: 'LF-05', level: 'stop', title: { id: 'safety.title.LF-05' },
  judge(s) {
    const early = s.day.tasks.filter((t) => t.kind === 'oilAway').flatMap((away) => s.frying.sessions.filter((x) => away.station === undefined || x.station === away.station).flatMap((x) => {
      const need = s.frying.oilEnds.find((e) => e.pan === x.pan)?.coolMinutes.value ?? 0;
      const waits = away.start - x.heatOffAt;
      return waits >= 0 && waits < need ? [{ pan: x.pan, waits, need }] : [];
    }));
    // A pan is heated more than once: its shortest wait is told.
    return {
      hits: worstOfEach(early, (e) => e.pan, (e) => -e.waits).map(({ pan, waits, need }): Hit => ({
        value: waits, unit: 'min', limit: { value: need, unit: 'min' }, about: [pan],
        message: { id: 'safety.say.LF-05', params: { pan: s.event.kitchen.pans.find((p) => p.id === pan)?.name ?? pan, minutes: waits, need } },
      })),
    };
  },
};
