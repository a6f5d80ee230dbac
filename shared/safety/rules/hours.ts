import { computed, divide, figure, minus, type Figure } from '../../figure';

/** Hours between two minutes of the day, both found by the plan. `until` is not before `from`. */
export const hoursBetween = (from: number, until: number): Figure => figure((until - from) / 60, 'h', () => ({
  rule: 'safety.hours',
  terms: [computed('until', { word: 'safety.term.until' }, until, 'min', 'safety.method.plan'), computed('from', { word: 'safety.term.from' }, from, 'min', 'safety.method.plan')],
  sum: divide(minus('until', 'from'), 60),
}));
