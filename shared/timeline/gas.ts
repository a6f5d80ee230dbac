import type { Burner, Event } from '../event';
import { computed, divide, entered, figure, sumOf, times, type Figure } from '../figure';
import { settle, settledTerm } from '../household';
import type { GasPlan, Task } from './types';

/** Minutes a burner is on for the tasks of the day; two tasks on one burner at once count once. */
export function burnerMinutes(tasks: readonly Task[], burner: string): number {
  const stretches = tasks.filter((t) => t.needs.some((n) => n.thing === `burner:${burner}`)).toSorted((a, b) => a.start - b.start);
  let minutes = 0;
  let until = Number.NEGATIVE_INFINITY;
  for (const { start, end } of stretches) {
    minutes += Math.max(0, end - Math.max(start, until));
    until = Math.max(until, end);
  }
  return minutes;
}

/**
 * What the day draws from each cylinder, burners full on for as long as the plan holds them, and how long the cylinder feeds all of its
 * burners so. A flame turned down draws less. Cylinders that no burner names are left out. Rules `gas.burner`, `gas.need`, `gas.lasts`.
 */
export function gasOf(event: Event, tasks: readonly Task[]): GasPlan[] {
  return event.kitchen.cylinders.flatMap((cylinder, at) => {
    const burners = event.kitchen.burners.flatMap((b, place) => (b.cylinder === cylinder.id ? [{ burner: b, place }] : []));
    if (burners.length === 0) return [];
    const each = burners.map(({ burner, place }) => burnerGas(event, tasks, burner, place));
    const values = each.map((f) => f.value);
    const heat = settle(event, 'gas.lpgMJkg');
    const usable = settle(event, 'gas.usableShare');
    const watts = burners.map(({ burner }) => burner.ratedW);
    const all = watts.reduce((a, b) => a + b, 0);
    return [{
      cylinder: cylinder.id,
      burners: burners.map(({ burner }, k) => ({ burner: burner.id, kg: each[k] ?? burnerGas(event, tasks, burner, k) })),
      needKg: figure(values.reduce((a, b) => a + b, 0), 'kg', () => ({ rule: 'gas.need', terms: [computed('burners', { word: 'timeline.term.burnerGas' }, values, 'kg', 'timeline.method.burnerGas')], sum: sumOf('burners') })),
      lasts: figure((cylinder.gasKg * usable.value * heat.value * 1e6) / all / 60, 'min', () => ({
        rule: 'gas.lasts',
        terms: [entered('gas', { word: 'timeline.term.gasIn' }, cylinder.gasKg, 'kg', `kitchen.cylinders[${at}].gasKg`), settledTerm('usable', usable), settledTerm('heat', heat),
          { key: 'watts', label: { word: 'timeline.term.ratings' }, value: watts, unit: 'W', origin: { kind: 'entered', path: `kitchen.burners[${burners[0]?.place ?? 0}].ratedW` } }],
        sum: divide(times('gas', 'usable', 'heat', 1e6), times(60, sumOf('watts'))),
      })),
      usableKg: cylinder.gasKg * usable.value,
    }];
  });
}

function burnerGas(event: Event, tasks: readonly Task[], burner: Burner, at: number): Figure {
  const heat = settle(event, 'gas.lpgMJkg');
  const minutes = burnerMinutes(tasks, burner.id);
  return figure((minutes * 60 * burner.ratedW) / (heat.value * 1e6), 'kg', () => ({
    rule: 'gas.burner',
    terms: [computed('minutes', { word: 'timeline.term.burnerOn' }, minutes, 'min', 'timeline.method.burnerOn'), entered('rated', { word: 'kitchen.term.rated' }, burner.ratedW, 'W', `kitchen.burners[${at}].ratedW`), settledTerm('heat', heat)],
    sum: divide(times(60, 'minutes', 'rated'), times(1e6, 'heat')),
  }));
}
