import { divide, figure, just, minus, plus, times, worked, type Figure } from '../figure';
import { settle, settledTerm } from '../household';
import type { TrialSubject } from './subject';

/** Batter of one piece, g: weight of all over their number. Null when nothing was weighed. Rule `trial.piece`. */
export function pieceMass({ trial, measured }: TrialSubject): Figure | null {
  const { beforeG, pieces } = trial;
  if (beforeG === undefined) return null;
  return figure(beforeG / pieces, 'g', () => ({
    rule: 'trial.piece', terms: [measured('before', 'trial.term.before', beforeG, 'g', 'beforeG'), measured('pieces', 'trial.term.pieces', pieces, 'pieces', 'pieces')], sum: divide('before', 'pieces'),
  }));
}

/** Put in to lift out, min, as timed. Null when nobody looked at the clock. Rule `trial.fry`. */
export function fryTime({ trial, measured }: TrialSubject): Figure | null {
  const { minutes } = trial;
  return minutes === undefined ? null : figure(minutes, 'min', () => ({ rule: 'trial.fry', terms: [measured('minutes', 'trial.term.minutes', minutes, 'min', 'minutes')], sum: just('minutes') }));
}

/** Oil taken up, kg per kg of batter: what had to be poured in to bring the oil to its mark. Null when nothing was poured in by measure. Rule `trial.uptake`. */
export function uptake({ event, trial, measured }: TrialSubject): Figure | null {
  const { topUpMl, beforeG } = trial;
  if (topUpMl === undefined || beforeG === undefined) return null;
  const rho = settle(event, 'oil.rho20');
  return figure((topUpMl * rho.value) / 1000 / beforeG, 'kg/kg', () => ({
    rule: 'trial.uptake',
    terms: [measured('topUp', 'trial.term.topUp', topUpMl, 'ml', 'topUpMl'), settledTerm('rho', rho), measured('before', 'trial.term.before', beforeG, 'g', 'beforeG')],
    sum: divide(divide(times('topUp', 'rho'), 1000), 'before'),
  }));
}

/**
 * Water boiled off, kg per kg of batter: the pieces lose water and gain oil, so what they lost on the scales is water less oil. Oil as measured,
 * or as the recipe has it. Null without both weights. Rule `trial.waterLost` (mass balance).
 */
export function waterLost(s: TrialSubject, oil: Figure | null): Figure | null {
  const { beforeG, afterG } = s.trial;
  if (beforeG === undefined || afterG === undefined) return null;
  const gained = oil?.value ?? s.frying.oilUptakeKgPerKg;
  return figure((beforeG - afterG) / beforeG + gained, 'kg/kg', () => ({
    rule: 'trial.waterLost',
    terms: [s.measured('before', 'trial.term.before', beforeG, 'g', 'beforeG'), s.measured('after', 'trial.term.after', afterG, 'g', 'afterG'),
      oil === null ? s.ofRecipe('oil', 'trial.term.oil', gained, 'kg/kg') : worked('oil', { word: 'trial.term.oil' }, oil)],
    sum: plus(divide(minus('before', 'after'), 'before'), 'oil'),
  }));
}
