import type { Event } from '../../../shared/event';
import { keysIn, type Figure, type Term, type Working } from '../../../shared/figure';
import { convert, isUnitId } from '../../../shared/measure';
import { Big } from 'big.js';

/** A working found under a figure. */
export interface Opened { readonly where: string; readonly working: Working }

/** Every working under a figure, its own included. */
export function opened(where: string, figure: Figure): Opened[] {
  const working = figure.working();
  return [{ where, working }, ...working.terms.flatMap((t) => (t.figure === undefined ? [] : opened(`${where}.${t.key}`, t.figure)))];
}

/** Inputs shown that the sum never uses. */
export const unused = ({ where, working }: Opened): string[] => {
  const used = keysIn(working.sum);
  return working.terms.filter((t) => !used.has(t.key)).map((t) => `${where}: ${working.rule} shows ${t.key} and never uses it`);
};

/** What stands in an event at a path such as `guests.waves[0].counts.adult`; undefined when there is nothing. */
export function at(event: Event, path: string): unknown {
  let here: unknown = event;
  for (const step of path.split(/[.[\]]+/).filter((s) => s !== '')) {
    here = typeof here === 'object' && here !== null ? Object.entries(here).find(([key]) => key === step)?.[1] : undefined;
  }
  return here;
}

/** An amount `{amount, unit}` in the unit a term shows; a plain number as it is. */
function shownAs(found: unknown, unit: string): unknown {
  if (typeof found !== 'object' || found === null || !('amount' in found) || !('unit' in found)) return found;
  if (typeof found.unit !== 'string' || !isUnitId(found.unit) || !isUnitId(unit)) return Number(found.amount);
  try {
    return convert({ amount: new Big(String(found.amount)), unit: found.unit }, unit).amount.toNumber();
  } catch {
    return Number(found.amount);
  }
}

/** Entered inputs whose field in the event does not hold the value shown. */
export const wrongEntries = (event: Event, { where, working }: Opened): string[] => working.terms.flatMap((t: Term) => {
  if (t.origin?.kind !== 'entered') return [];
  const found = t.origin.path.split(', ').map((path) => shownAs(at(event, path), t.unit));
  const same = typeof t.value === 'number' ? found.length === 1 && found[0] === t.value
    : found.length === 1 && Array.isArray(found[0]) ? JSON.stringify(found[0]) === JSON.stringify(t.value)
    : t.value.length === 0 || JSON.stringify(found) === JSON.stringify(t.value);
  return same ? [] : [`${where}: ${working.rule}.${t.key} shows ${JSON.stringify(t.value)}, ${t.origin.path} holds ${JSON.stringify(found)}`];
});

/** Definitions of all workings: what each rule's input was said to be. */
export function definitions(all: readonly Opened[]): Map<string, Set<string>> {
  const found = new Map<string, Set<string>>();
  for (const { working } of all) {
    for (const t of working.terms) {
      if (t.origin?.kind !== 'definition') continue;
      const key = `${working.rule}.${t.key}`;
      found.set(key, (found.get(key) ?? new Set()).add(JSON.stringify(t.value)));
    }
  }
  return found;
}
