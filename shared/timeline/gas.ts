import type { Event } from '../event';
import { computed, divide, entered, figure, just, plus, roundUp, sumOf, times, worked, type Figure, type Term } from '../figure';
import { settle, settledTerm } from '../household';
import { flamesOf, type Flame } from './flames';
import type { GasNeed, GasPlan, Task } from './types';

const bottled = ({ burner }: Flame): boolean => burner.kind === 'lpg' || burner.kind === 'outdoorGas' || (burner.kind === 'gas' && burner.cylinder !== undefined);

interface BurnerGas {
  readonly flame: Flame;
  readonly kg: Figure;
}

/** What each burner on bottled gas burns in the day. */
const burnersOn = (event: Event, tasks: readonly Task[]): BurnerGas[] => flamesOf(event, tasks).filter(bottled).map((flame) => ({ flame, kg: burnerGas(event, flame) }));

/** Rating × minutes at full flame, and a share of it while oil is kept hot, over the heat of the gas. Rule `gas.burner`. Unit: kg. */
function burnerGas(event: Event, { burner, full, oil }: Flame): Figure {
  const heat = settle(event, 'gas.lpgMJkg');
  const steady = settle(event, 'things.gasSteady');
  const path = `kitchen.burners[${event.kitchen.burners.indexOf(burner)}].ratedW`;
  return figure(((full + oil * steady.value) * 60 * burner.ratedW) / (heat.value * 1e6), 'kg', () => {
    const kept: Term[] = oil > 0 ? [computed('oil', { word: 'timeline.term.oilHot' }, oil, 'min', 'timeline.method.burnerOn'), settledTerm('steady', steady)] : [];
    const minutes = oil > 0 ? plus('full', times('oil', 'steady')) : just('full');
    return {
      rule: 'gas.burner',
      terms: [computed('full', { word: 'timeline.term.burnerOn' }, full, 'min', 'timeline.method.burnerOn'), ...kept, entered('rated', { word: 'kitchen.term.rated' }, burner.ratedW, 'W', path), settledTerm('heat', heat)],
      sum: divide(times(60, minutes, 'rated'), times(1e6, 'heat')),
    };
  });
}

const burned = (burners: readonly BurnerGas[]): Figure => figure(burners.reduce((sum, b) => sum + b.kg.value, 0), 'kg', () => {
  const terms = burners.map((b, k) => worked(`b${k}`, { text: b.flame.burner.name }, b.kg));
  return { rule: 'gas.need', terms, sum: plus(...terms.map((t) => t.key)) };
});

/**
 * Bottled gas of the whole day, by everything that stands on its burners, and what has to be in the cylinders for it: the last share of a
 * cylinder comes too slowly to count on; up to the next tenth of a kilogram. Null where no burner runs on bottled gas, or none is lit.
 * Rules `gas.need`, `gas.wanted`. Unit: kg.
 */
export function gasNeed(event: Event, tasks: readonly Task[]): GasNeed | null {
  const burners = burnersOn(event, tasks).filter((b) => b.kg.value > 0);
  if (burners.length === 0) return null;
  const usable = settle(event, 'gas.usableShare');
  const usedKg = burned(burners);
  return {
    usedKg,
    wantedKg: figure(Math.ceil(((usedKg.value / usable.value) * 10) - 1e-9) / 10, 'kg', () => ({
      rule: 'gas.wanted', terms: [worked('used', { word: 'timeline.term.gasUsed' }, usedKg), settledTerm('usable', usable)], sum: divide(roundUp(times(divide('used', 'usable'), 10)), 10),
    })),
  };
}

/**
 * What the day draws from each cylinder, and how long the cylinder feeds all of its burners full on. Cylinders that no burner names are
 * left out: their gas counts for the day as a whole (`gasNeed`). Rules `gas.burner`, `gas.need`, `gas.lasts`.
 */
export function gasOf(event: Event, tasks: readonly Task[]): GasPlan[] {
  if (!event.kitchen.cylinders.some((c) => event.kitchen.burners.some((b) => b.cylinder === c.id))) return [];
  const all = burnersOn(event, tasks);
  return event.kitchen.cylinders.flatMap((cylinder, at): GasPlan[] => {
    const own = all.filter((b) => b.flame.burner.cylinder === cylinder.id);
    return own.length === 0 ? [] : [{
      cylinder: cylinder.id, burners: own.map((b) => ({ burner: b.flame.burner.id, kg: b.kg })), needKg: burned(own),
      lasts: lastsFigure(event, at, cylinder.gasKg, own), usableKg: cylinder.gasKg * settle(event, 'gas.usableShare').value,
    }];
  });
}

function lastsFigure(event: Event, at: number, gasKg: number, own: readonly BurnerGas[]): Figure {
  const heat = settle(event, 'gas.lpgMJkg');
  const usable = settle(event, 'gas.usableShare');
  const watts = own.map((b) => b.flame.burner.ratedW);
  return figure((gasKg * usable.value * heat.value * 1e6) / watts.reduce((a, b) => a + b, 0) / 60, 'min', () => ({
    rule: 'gas.lasts',
    terms: [entered('gas', { word: 'timeline.term.gasIn' }, gasKg, 'kg', `kitchen.cylinders[${at}].gasKg`), settledTerm('usable', usable), settledTerm('heat', heat),
      { key: 'watts', label: { word: 'timeline.term.ratings' }, value: watts, unit: 'W', origin: { kind: 'entered', path: `kitchen.burners[${event.kitchen.burners.findIndex((b) => b.id === own[0]?.flame.burner.id)}].ratedW` } }],
    sum: divide(times('gas', 'usable', 'heat', 1e6), times(60, sumOf('watts'))),
  }));
}
