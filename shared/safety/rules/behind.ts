import type { Level } from '../types';
import type { Rule, Verdict } from '../rule';

/**
 * A rule that is told on paper rather than measured: the sheet that has to say it is made whenever it matters, so it is in order by how the product
 * is built. A test holds the sheets to it.
 */
const told = (id: string, level: Level): Rule => ({ id, level, title: { id: 'safety.title.told' }, judge: () => ({ hits: [] }) });
/**
 * Rules that a sheet tells. Fry sheet, oil card, emergency card, first-batch card: never water, lid on, leave, skim, sleeves, 20 minutes of water, fumes,
 * no raw batter. Drinks sheet: flasks emptied and rinsed (ED-06), no child on the lap (SC-06). Labels for left-over food: when it goes, what is in it, how it
 * is heated (LO-05). At the foot of every sheet: local rules first.
 */
export const toldRules: readonly Rule[] = [told('ED-06', 'warn'), told('SC-06', 'warn'), told('LO-05', 'caution'), told('DF-06', 'stop'), told('DF-07', 'stop'), told('DF-08', 'stop'), told('DF-09', 'stop'), told('DF-16', 'caution'), told('DF-17', 'caution'), told('SC-08', 'caution'), told('GC-03', 'caution'), told('PR-08', 'caution'), told('CX-04', 'caution')];

/** What a rule says whose reason another one judges: nothing of its own, and it lacks what the other lacks. */
export const behindVerdict = ({ needs }: Verdict): Verdict => (needs === undefined ? { hits: [] } : { hits: [], needs });
/** A fact that stands behind another rule: there is nothing more to judge than that rule judges. What that one finds is told there, once; where it lacks an input, so does this. */
export const behind = (id: string, level: Level, other: Rule): Rule => ({ id, level, title: { id: 'safety.title.behind' }, behind: other, judge: (s) => behindVerdict(other.judge(s)) });

/** As `behind`, for a fact whose rule never lacks an input (cups SC-03 and SC-04, rice LO-03, caffeine CD-05, starch AC-01, pots LF-01): nothing is judged twice. */
export const behindSure = (id: string, level: Level): Rule => ({ id, level, title: { id: 'safety.title.behind' }, judge: () => ({ hits: [] }) });
