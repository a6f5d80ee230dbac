import type { Precautions } from '../../event';
import type { Message } from '../../words';
import type { Level } from '../types';
import type { Hit, Rule, Subject, Verdict } from '../rule';

/** Facts of the precautions that rules ask for. */
export type FactKey = 'lidAtHand' | 'extinguisher' | 'outdoorPlace' | 'wallMetres' | 'flameCm' | 'thermometer' | 'childLine' | 'friedDry' | 'oilSigns' | 'coAlarm' | 'air' | 'cylinderCm' | 'leakTested' | 'extensionCord' | 'protectedSockets'
  | 'carryMetres' | 'carrySteps' | 'lifters' | 'flaskTableCm' | 'flaskTableSteady' | 'adultsPour' | 'tongs' | 'openFoodThrown' | 'cutForChildren' | 'handwash' | 'ill' | 'occasion' | 'venue' | 'caterer' | 'address' | 'emergencyNumber'
  | 'eggsChilled' | 'cookedC' | 'coolTrays' | 'coolTrayLongCm' | 'coolTrayWideCm' | 'reheatIn' | 'platesChanged' | 'picklePh' | 'pickleTested';
/** Says which fact is missing and where it is answered. */
export const needsFact = (field: FactKey): Message => ({ id: 'safety.needs.fact', params: { field } });

/** What a rule makes of one fact: nothing where it does not matter, a hit, or in order. */
export interface FactRule<K extends FactKey> {
  readonly id: string;
  readonly level: Level;
  readonly title: Message;
  readonly fact: K;
  /** Whether the rule has anything to say about this event. */
  readonly applies: (s: Subject) => boolean;
  /** Null when the fact is in order. */
  readonly judge: (fact: NonNullable<Precautions[K]>, s: Subject) => Hit | null;
}

/** A rule that looks at one fact only the household knows; where that is not said, it asks for it. */
export const factRule = <K extends FactKey>(r: FactRule<K>): Rule => ({
  id: r.id, level: r.level, title: r.title,
  judge: (s): Verdict => {
    if (!r.applies(s)) return { hits: [] };
    const fact: Precautions[K] | undefined = s.event.precautions?.[r.fact];
    if (fact === undefined || fact === null) return { hits: [], needs: needsFact(r.fact) };
    const hit = r.judge(fact, s);
    return { hits: hit === null ? [] : [hit] };
  },
});

/** Measured value and limit of a yes-or-no question: 0 wanted and 1 found, or the other way round. */
export const yesNo = (is: boolean): Pick<Hit, 'value' | 'unit' | 'limit'> => ({ value: is ? 1 : 0, unit: '', limit: { value: is ? 0 : 1, unit: '' } });

/** Whether anything is fried. */
export const fries = (s: Subject): boolean => s.frying.sessions.length > 0;
/** Whether hot drinks are made. */
export const hotDrinks = (s: Subject): boolean => s.drinks.rounds.some((r) => s.menu.dishes.some((d) => d.id === r.drink && d.recipe.brewing?.hot === true));
/** Children up to an age band who come. */
export const childrenOf = (s: Subject, bands: readonly ('under1' | 'age1to3' | 'age4to6' | 'age7to9' | 'age10to12')[]): number => s.guests.waves.reduce((sum, w) => sum + bands.reduce((n, b) => n + w.counts[b], 0), 0);
/** Under seven, the bands that hold the under-fives. */
export const small = ['under1', 'age1to3', 'age4to6'] as const;
/** Up to twelve. */
export const young = [...small, 'age7to9', 'age10to12'] as const;
