import type { Event } from '../../event';
import { divide, plus, roundUp, times } from '../../figure';
import { settle, settledTerm } from '../../household';
import type { Term } from '../../figure';
import type { HeatUse, ThingNeed } from '../types';
import { needOfThing, summed } from './count';

const bottled = new Set(['lpg', 'outdoorGas']);

/**
 * Bottled gas for burners that run on it: rating × time × share of the flame, all uses added, over the heat in a kilogram, with a spare;
 * up to the next ten grams. Burners that no use names (a pot of rice) are not counted. Unit: kg.
 */
export function gasNeeds(event: Event, heat: readonly HeatUse[]): ThingNeed[] {
  const steady = settle(event, 'things.gasSteady');
  const uses = event.kitchen.burners.filter((b) => bottled.has(b.kind)).flatMap((burner) => {
    const own = heat.filter((h) => h.burner === burner.id);
    const minutes = own.reduce((sum, h) => sum + h.minutes * (h.share ?? steady.value), 0);
    return minutes > 0 ? [{ burner, minutes }] : [];
  });
  if (uses.length === 0) return [];
  const terms = uses.flatMap(({ burner, minutes }, i): Term[] => [
    { key: `w${i}`, label: { text: burner.name }, value: burner.ratedW, unit: 'W', origin: { kind: 'entered', path: `kitchen.burners[${event.kitchen.burners.indexOf(burner)}].ratedW` } },
    { key: `m${i}`, label: { word: 'buying.term.fullFlame', params: { burner: burner.name } }, value: minutes, unit: 'min', origin: { kind: 'computed', method: 'buying.method.flame' } },
  ]);
  const joules = plus(...uses.map((_, i) => times(`w${i}`, `m${i}`, 60)));
  return needOfThing('gas-bottle', 'kg', 'burners', summed('kg', 'things.gas', [
    ...terms, settledTerm('mj', settle(event, 'gas.lpgMJkg')), settledTerm('spare', settle(event, 'things.gasSpare')),
  ], divide(roundUp(times(divide(joules, times('mj', 1_000_000)), plus(1, 'spare'), 100)), 100)));
}
