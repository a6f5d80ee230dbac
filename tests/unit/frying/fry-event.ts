import { eventSchema, type Event } from '../../../shared/event';
import type { Figure } from '../../../shared/figure';
import { recompute, ruleIds } from '../../../shared/figure';
import { planFrying, type FryingPlan } from '../../../shared/frying';
import { planGuests } from '../../../shared/guests';
import { planKitchen } from '../../../shared/kitchen';
import { planMenu, type MenuPlan } from '../../../shared/menu';
import { isWordId } from '../../../shared/words';

/** What a test may change of the fry event below. */
export interface FryChange {
  readonly adults?: number;
  readonly pans?: readonly Record<string, unknown>[];
  readonly burners?: readonly Record<string, unknown>[];
  readonly stations?: readonly Record<string, unknown>[];
  readonly frying?: Record<string, unknown>;
  readonly second?: Record<string, unknown>;
  readonly more?: Record<string, unknown>;
  readonly kitchen?: Record<string, unknown>;
}
export const roundPan = { id: 'pan-1', name: 'Round pan', shape: 'round', rimMm: 400, depthMm: 140, massKg: 1.8, oilLitres: 3, burner: 'ring-1' };
export const gasRing = { id: 'ring-1', name: 'Ring', kind: 'gas', ratedW: 5000 };

/** Fritters for some adults who come between 12:00 and 14:00; `second` adds another fried dish at the same station. */
export function fryEvent(change: FryChange = {}): Event {
  const flour = { ingredient: 'chickpea-flour', amount: { amount: '1000', unit: 'g' } };
  const recipe = (id: string, frying: Record<string, unknown>) => ({
    id, name: id, role: 'friedSnack', yield: { amount: { amount: '94', unit: 'piece' }, portions: 94 }, ingredients: [flour],
    frying: { pieceBatterG: 25, fryMinutes: 4, handlingMinutes: 1, ...frying },
  });
  const second = change.second === undefined ? [] : [recipe('second', change.second)];
  return eventSchema.parse({
    format: 'brimful-event/1', id: 'fry', title: 'Frying', day: '2026-12-12', opensAt: 690, closesAt: 1020,
    guests: { waves: [{ id: 'noon', name: 'Noon', from: 720, to: 840, counts: { adult: change.adults ?? 40 }, stay: { shortest: 60, usual: 90, longest: 150 } }] },
    menu: { dishes: [{ id: 'fritters', recipe: 'fritters' }, ...second.map((r) => ({ id: r.id, recipe: r.id }))] },
    recipes: [recipe('fritters', change.frying ?? {}), ...second],
    kitchen: {
      pans: change.pans ?? [roundPan], burners: change.burners ?? [gasRing],
      stations: change.stations ?? [{ id: 'fry-1', name: 'Fry line', pans: (change.pans ?? [roundPan]).map((p) => p['id']), dishes: ['fritters', 'second'] }], ...change.kitchen,
    },
    ...change.more,
  });
}

export function fry(event: Event): { frying: FryingPlan; menu: MenuPlan } {
  const menu = planMenu(event, planGuests(event));
  return { frying: planFrying(event, menu, planKitchen(event)), menu };
}

/** Every figure inside a value, with the figures their workings rest on. */
export function figuresIn(value: unknown, seen = new Set<unknown>()): Figure[] {
  if (typeof value !== 'object' || value === null || seen.has(value)) return [];
  seen.add(value);
  if (isFigure(value)) return [value, ...value.working().terms.flatMap((t) => figuresIn(t.figure, seen))];
  return Object.values(value).flatMap((v) => figuresIn(v, seen));
}
const isFigure = (v: object): v is Figure => 'working' in v && typeof v.working === 'function' && 'value' in v && 'unit' in v;

/** What is wrong with a figure's working; empty when it recomputes and every leaf names where it comes from. */
export function workingFaults(f: Figure): string[] {
  const working = f.working();
  const again = recompute(working);
  const faults = Math.abs(again - f.value) <= 1e-9 * Math.max(1, Math.abs(f.value)) ? [] : [`${working.rule}: shows ${f.value}, recomputes ${again}`];
  if (working.terms.length === 0) faults.push(`${working.rule}: no inputs`);
  for (const t of working.terms) if ((t.origin === undefined) === (t.figure === undefined)) faults.push(`${working.rule}: ${t.key} needs one source`);
  return faults;
}

/** Rules outside the register and labels without words in a figure's working. */
export function wordFaults(f: Figure): string[] {
  const { rule, terms } = f.working();
  const known = new Set<string>(ruleIds);
  return [
    ...(known.has(rule) && isWordId(`rule.${rule}`) ? [] : [`no rule or sentence ${rule}`]),
    ...terms.flatMap((t) => ('word' in t.label && !isWordId(t.label.word) ? [`no words ${t.label.word}`] : [])),
  ];
}
