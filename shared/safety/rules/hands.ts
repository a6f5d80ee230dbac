import type { Rule } from '../rule';
import { factRule, fries, yesNo } from './facts';

const serves = (s: Parameters<Rule['judge']>[0]): boolean => s.menu.dishes.some((d) => d.firstServed !== null);

/** HY-01: running water, soap and a towel where food is handled. */
export const handwash: Rule = factRule({ id: 'HY-01', level: 'caution', title: { id: 'safety.title.HY-01' }, fact: 'handwash', applies: (s) => serves(s) || fries(s), judge: (has) => (has ? null : { ...yesNo(false), about: [], message: { id: 'safety.say.HY-01' } }) });
/** HY-02: tongs or a spoon for every dish. */
export const tongs: Rule = factRule({ id: 'HY-02', level: 'caution', title: { id: 'safety.title.HY-02' }, fact: 'tongs', applies: serves, judge: (has) => (has ? null : { ...yesNo(false), about: [], message: { id: 'safety.say.HY-02' } }) });
/** HY-03: who was ill stays away from food for two days. */
export const illHelper: Rule = factRule({ id: 'HY-03', level: 'stop', title: { id: 'safety.title.HY-03' }, fact: 'ill', applies: (s) => serves(s) || s.day.tasks.length > 0, judge: (ill) => (ill ? { value: 0, unit: 'h', about: [], message: { id: 'safety.say.HY-03' } } : null) });
/** LO-04: what lay open where guests helped themselves is thrown away. */
export const openFood: Rule = factRule({ id: 'LO-04', level: 'warn', title: { id: 'safety.title.LO-04' }, fact: 'openFoodThrown', applies: serves, judge: (thrown) => (thrown ? null : { ...yesNo(false), about: [], message: { id: 'safety.say.LO-04' } }) });
