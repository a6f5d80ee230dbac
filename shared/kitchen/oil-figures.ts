import type { Event } from '../event';
import { divide, figure, minus, times, type Figure, type Term } from '../figure';
import { settle, settledTerm } from '../household';
import { hotVolume, oilDensity } from './rules';

/** Density of the frying oil at a temperature, kg/m³. Rule `oil.density`. */
export function oilDensityAt(event: Event, celsius: Term & { readonly value: number }): Figure {
  const rho20 = settle(event, 'oil.rho20');
  const slope = settle(event, 'oil.rhoSlope');
  return figure(oilDensity(rho20.value, slope.value, celsius.value), 'kg/m³', () => ({
    rule: 'oil.density', terms: [settledTerm('rho20', rho20), settledTerm('slope', slope), { ...celsius, key: 'celsius' }],
    sum: minus('rho20', times('slope', minus('celsius', 20))),
  }));
}

/** Litres of oil once hot. Rule `oil.hotVolume`. `cold` is the fill at 20 °C. */
export function hotOil(event: Event, cold: Term & { readonly value: number }, celsius: Term & { readonly value: number }): Figure {
  const rho20 = settle(event, 'oil.rho20');
  const hot = oilDensityAt(event, celsius);
  return figure(hotVolume(cold.value, rho20.value, hot.value), 'L', () => ({
    rule: 'oil.hotVolume',
    terms: [{ ...cold, key: 'cold' }, settledTerm('rho20', rho20), { key: 'hot', label: { word: 'kitchen.term.hotDensity' }, value: hot.value, unit: 'kg/m³', figure: hot }],
    sum: divide(times('cold', 'rho20'), 'hot'),
  }));
}
