import { computed, divide, entered, exponential, figure, least, logarithm, minus, plus, times, worked, type Figure } from '../figure';
import { loadInputs } from '../frying';
import { settle, settledTerm } from '../household';
import { termOf, type Asked } from './heat';
import type { TrialSubject } from './subject';

/**
 * Power into oil and pieces over losses, kW, by the time until the oil is back: over that time the burner gave just what the pieces took. Needs
 * no model of the oil. Null when the time was not taken. Rule `trial.netByTime` (heat balance).
 */
export function netByTime(s: TrialSubject, asked: Asked): Figure | null {
  const { backMinutes } = s.trial;
  if (backMinutes === undefined) return null;
  const tau = Number(asked.tau.value);
  const until = Math.min(backMinutes, Number(asked.fryMinutes.value)) * 60;
  return figure((asked.peak.value * tau * (1 - Math.exp(-until / tau))) / (60 * backMinutes), 'kW', () => ({
    rule: 'trial.netByTime',
    terms: [worked('peak', { word: 'trial.term.peak' }, asked.peak), asked.tau, termOf('fry', 'frying.term.fryMinutes', asked.fryMinutes), s.measured('back', 'trial.term.back', backMinutes, 'min', 'backMinutes')],
    sum: divide(times('peak', 'tau', minus(1, exponential(times(-1, divide(times(60, least('back', 'fry')), 'tau'))))), times(60, 'back')),
  }));
}

/** Rounds of the iteration below; it gains a digit in each few. */
const rounds = 400;

/**
 * Power over losses, kW, by how far the oil cooled: oil and pan gave the heat the burner did not. Null without both temperatures, or when the fall
 * is more than the pieces can take. The demand meets the power at the lowest point; solved for the power by repetition, and shown so that a wrong
 * one would show. Rules `trial.netByFall`, `trial.netByFallWhole` (`fry.dip` turned round).
 */
export function netByFall(s: TrialSubject, asked: Asked): Figure | null {
  const { startC, lowestC } = s.trial;
  if (startC === undefined || lowestC === undefined || lowestC >= startC) return null;
  const capacity = loadInputs(s.event, s.state, s.frying, s.recipe, 1).capacity;
  const tau = Number(asked.tau.value);
  const seconds = Number(asked.fryMinutes.value) * 60;
  const given = capacity.value * (startC - lowestC);
  const terms = [
    worked('capacity', { word: 'frying.term.capacity' }, capacity), s.measured('start', 'trial.term.start', startC, 'degC', 'startC'), s.measured('lowest', 'trial.term.lowest', lowestC, 'degC', 'lowestC'),
  ];
  const fell = times('capacity', minus('start', 'lowest'));
  // Still falling when the pieces are lifted: the lowest point is the end.
  const whole = (asked.heat.value - given) / seconds;
  const peak = asked.peak.value;
  if (whole <= peak * Math.exp(-seconds / tau)) {
    return whole <= 0 ? null : figure(whole, 'kW', () => ({
      rule: 'trial.netByFallWhole', terms: [worked('heat', { word: 'trial.term.heat' }, asked.heat), ...terms, termOf('fry', 'frying.term.fryMinutes', asked.fryMinutes)],
      sum: divide(minus('heat', fell), times(60, 'fry')),
    }));
  }
  const top = peak - given / tau;
  let net = peak;
  for (let n = 0; n < rounds; n += 1) net = top / (1 + Math.log(peak / net));
  if (!(net > 0)) return null;
  const found = net;
  return figure(found, 'kW', () => ({
    rule: 'trial.netByFall', terms: [worked('peak', { word: 'trial.term.peak' }, asked.peak), ...terms, asked.tau, computed('tried', { word: 'trial.term.tried' }, found, 'kW', 'trial.method.tried')],
    sum: divide(minus('peak', divide(fell, 'tau')), plus(1, logarithm(divide('peak', 'tried')))),
  }));
}

/** Useful power, W: what oil and pieces got, and what the hot pan lost to the room. The pan was alone on its burner. Rule `trial.useful`. */
export function usefulPower(s: TrialSubject, net: Figure): Figure {
  const loss = settle(s.event, 'loss.UA');
  const { startC } = s.trial;
  const celsius = startC === undefined ? s.ofRecipe('oil', 'frying.term.targetC', s.frying.targetC, 'degC') : s.measured('oil', 'trial.term.start', startC, 'degC', 'startC');
  const room = s.event.kitchen.roomC;
  return figure(net.value * 1000 + loss.value * (Number(celsius.value) - room), 'W', () => ({
    rule: 'trial.useful', terms: [worked('net', { word: 'trial.term.net' }, net), settledTerm('loss', loss), celsius, entered('room', { word: 'frying.term.room' }, room, 'degC', 'kitchen.roomC')],
    sum: plus(times(1000, 'net'), times('loss', minus('oil', 'room'))),
  }));
}

/** Share of the rating that reaches the pan in still air; out of doors the wind took its part, which the plan takes again. Null for a burner nobody entered. Rules `trial.share`, `trial.shareWindy`. */
export function usefulShare(s: TrialSubject, useful: Figure): Figure | null {
  const burner = s.event.kitchen.burners[s.burnerAt];
  if (burner === undefined) return null;
  const terms = [worked('useful', { word: 'frying.term.useful' }, useful), entered('rated', { word: 'kitchen.term.rated' }, burner.ratedW, 'W', `kitchen.burners[${s.burnerAt}].ratedW`)];
  if (burner.place !== 'outdoor' || burner.wind === undefined || burner.wind === 'calm') return figure(useful.value / burner.ratedW, '', () => ({ rule: 'trial.share', terms, sum: divide('useful', 'rated') }));
  const lost = settle(s.event, burner.wind === 'breeze' ? 'wind.breeze' : 'wind.wind');
  return figure(useful.value / burner.ratedW / (1 - lost.value), '', () => ({ rule: 'trial.shareWindy', terms: [...terms, settledTerm('lost', lost)], sum: divide(divide('useful', 'rated'), minus(1, 'lost')) }));
}
