import { figure, just } from '../../figure';
import { settle, settledTerm } from '../../household';
import { mayBeLeft } from '../../menu';
import type { Rule } from '../rule';

/** Days in the fridge from which on left-over food is asked about; at four it is thrown away (rule LO-01, USDA). */
const keepDays = 3;

/** LO-01: what is left is eaten within three days. Judged by the days that the household prints on its labels. */
export const leftoverDays: Rule = {
  id: 'LO-01', level: 'warn', title: { id: 'safety.title.LO-01' },
  judge(s) {
    const left = s.menu.dishes.filter(mayBeLeft);
    const days = settle(s.event, 'prep.leftoverDays');
    if (left.length === 0 || days.value <= keepDays) return { hits: [] };
    const shown = figure(days.value, 'd', () => ({ rule: 'safety.leftoverDays', terms: [settledTerm('days', days)], sum: just('days') }));
    return { hits: [{ value: days.value, unit: 'd', figure: shown, limit: { value: keepDays, unit: 'd' }, about: left.map((d) => d.id), message: { id: 'safety.say.LO-01', params: { days: days.value, limit: keepDays } } }] };
  },
};
