import type { Event } from '../event';
import { divide, entered, figure, logarithm, minus, power, times, worked, type Figure, type Sum } from '../figure';
import { settle, settledTerm } from '../household';
import { airKpa, boilsAt, mmHgPerKpa } from './rules';

/** Pressure of the air in the kitchen, kPa, by its height above the sea. Rule `air.pressure`. */
export function airPressure(event: Event): Figure {
  const [sea, seaK, lapse, exponent] = [settle(event, 'air.seaKpa'), settle(event, 'air.seaK'), settle(event, 'air.lapse'), settle(event, 'air.exponent')];
  const height = event.kitchen.altitudeM;
  return figure(airKpa({ seaKpa: sea.value, seaK: seaK.value, lapse: lapse.value, exponent: exponent.value }, height), 'kPa', () => ({
    rule: 'air.pressure',
    terms: [settledTerm('sea', sea), settledTerm('lapse', lapse), entered('height', { word: 'kitchen.term.altitude' }, height, 'm', 'kitchen.altitudeM'), settledTerm('seaK', seaK), settledTerm('exponent', exponent)],
    sum: times('sea', power(minus(1, divide(times('lapse', 'height'), 'seaK')), 'exponent')),
  }));
}

const antoineSum = (kpa: string): Sum => divide('b', minus('a', divide(logarithm(times(kpa, mmHgPerKpa)), Math.LN10)));

/**
 * Temperature at which water boils in this kitchen, °C: that at sea level less what the thinner air takes off by Antoine's equation, so that
 * the two agree at sea level. A house figure for `boil.C` is what was measured there and stands as it is. Rules `boil.altitude`, `boil.measured`.
 */
export function boilingPoint(event: Event): Figure {
  const sea = settle(event, 'boil.C');
  if (sea.origin.kind === 'house') return figure(sea.value, 'degC', () => ({ rule: 'boil.measured', terms: [settledTerm('boil', sea)], sum: times('boil', 1) }));
  const [a, b, c, seaKpa] = [settle(event, 'water.antoineA'), settle(event, 'water.antoineB'), settle(event, 'water.antoineC'), settle(event, 'air.seaKpa')];
  const air = airPressure(event);
  const constants = { a: a.value, b: b.value, c: c.value };
  return figure(sea.value - (boilsAt(constants, seaKpa.value) - boilsAt(constants, air.value)), 'degC', () => ({
    rule: 'boil.altitude',
    terms: [settledTerm('boil', sea), settledTerm('a', a), settledTerm('b', b), settledTerm('sea', seaKpa), worked('air', { word: 'kitchen.term.air' }, air)],
    sum: minus('boil', minus(antoineSum('sea'), antoineSum('air'))),
  }));
}
