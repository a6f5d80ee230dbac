import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { eventSchema, type Event, type Recipe } from '../../../shared/event';
import { parseShelf } from '../../../shared/household';

const parsed = parseShelf(readFileSync(resolve('assets/app/shelf/starter.brimful-shelf'), 'utf8'));
if (!parsed.ok) throw new Error('the starter shelf opens');
const shelf: readonly Recipe[] = parsed.shelf.recipes;

/** A recipe of the starter shelf. */
export function recipeOf(id: string): Recipe {
  const found = shelf.find((r) => r.id === id);
  if (found === undefined) throw new Error(`no recipe ${id}`);
  return found;
}

/** What may differ between the events of these tests. */
export interface Meal {
  readonly recipes?: readonly string[];
  readonly pots?: readonly number[];
  readonly adults?: number;
  readonly served?: { readonly from: number; readonly to: number };
  readonly holding?: { readonly place: 'hot' | 'cold' | 'counter'; readonly temperatureC?: number };
  readonly profile?: 'household' | 'us' | 'uk' | 'eu';
  readonly roomC?: number;
  readonly hotHoldC?: number;
  readonly cooks?: number;
  readonly burners?: number;
}

/** Eighty people in four waves from 11:00 to 19:00, rice, beans and yoghurt, as a new user would write it. */
export const mealEvent = (m: Meal = {}): Event => eventSchema.parse({
  format: 'brimful-event/1', id: 'meal', title: 'Meal', day: '2026-12-12', opensAt: 660, closesAt: 1140, preferences: { safetyProfile: m.profile ?? 'household' },
  guests: { waves: [660, 780, 900, 1020].map((from, i) => ({ id: `w${i}`, name: `Wave ${i + 1}`, from, to: from + 30, counts: { adult: m.adults ?? 20 }, stay: { shortest: 60, usual: 90, longest: 120 } })) },
  menu: { dishes: (m.recipes ?? ['boiled-rice', 'kidney-bean-pot', 'yoghurt-cucumber-bowl']).map((id) => ({ id, recipe: id, served: m.served === undefined ? { kind: 'throughout' } : { kind: 'between', ...m.served }, holding: m.holding })) },
  recipes: (m.recipes ?? ['boiled-rice', 'kidney-bean-pot', 'yoghurt-cucumber-bowl']).map(recipeOf),
  kitchen: {
    roomC: m.roomC ?? 21, hotHoldC: m.hotHoldC ?? null, counterPlaces: 6,
    pots: (m.pots ?? [10]).map((litres, i) => ({ id: `p${i}`, name: `Pot ${i + 1}`, litres })), burners: Array.from({ length: m.burners ?? 2 }, (_, i) => ({ id: `b${i}`, name: `Ring ${i + 1}`, kind: 'gas', ratedW: 3000 })),
  },
  people: Array.from({ length: m.cooks ?? 2 }, (_, i) => ({ id: `c${i}`, name: `Cook ${i + 1}`, roles: ['cook', 'runner'], from: 360, to: 1260 })),
});
