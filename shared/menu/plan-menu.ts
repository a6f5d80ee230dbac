import type { Event } from '../event';
import type { GuestsPlan } from '../guests';
import { settle } from '../household';
import { layTable, type Course } from './courses';
import { allergyCovers, dietCovers } from './diets';
import { planDish, type Sizing } from './dish-plan';
import { waveFigures } from './portions';
import { betweenShape, throughoutShape, waveEnd, type Grid, type Shape } from './shapes';
import type { MenuPlan } from './types';

/** One grid for all dishes: from the first arrival or the opening to the last guest's leaving or the closing. */
function gridOf(event: Event, guests: GuestsPlan): Grid {
  const from = Math.floor(Math.min(event.opensAt, ...guests.waves.map((w) => w.from)));
  const to = Math.ceil(Math.max(event.closesAt, ...guests.waves.map((w) => waveEnd(w) + Math.max(0, w.stay.longest - w.stay.mean))));
  return { from, minutes: Math.max(1, to - from) };
}

/** Shapes are shared by all dishes eaten alike; each is worked out once. */
function shapes(event: Event, guests: GuestsPlan, grid: Grid): Sizing['shapeOf'] {
  const made = new Map<string, Shape>();
  const snack = { firstShare: settle(event, 'eat.firstShare').value, firstMinutes: settle(event, 'eat.firstMinutes').value };
  const even = { firstShare: 0, firstMinutes: 0 };
  return ({ dish: { served }, servedAs }: Course, index: number): Shape => {
    const wave = guests.waves[index];
    if (wave === undefined) return { start: 0, end: 0, share: new Float64Array(0) };
    const key = served.kind === 'between' ? `${index} ${served.from} ${served.to}` : `${index} ${servedAs === 'cup' ? 'cup' : 'food'}`;
    const found = made.get(key);
    if (found !== undefined) return found;
    const shape = served.kind === 'between'
      ? betweenShape(grid, wave, served.from, served.to)
      : throughoutShape(grid, wave, servedAs === 'cup' ? even : snack);
    made.set(key, shape);
    return shape;
  };
}

/**
 * Portions of every dish and drink: per adult by role or as typed, children by age, similar dishes sharing one appetite, more for longer stays;
 * demand minute by minute; ingredients scaled exactly; who can eat what. Of each dish what the expected guests take, and a reserve for the share of days to be covered.
 */
export function planMenu(event: Event, guests: GuestsPlan): MenuPlan {
  const table = layTable(event);
  const grid = gridOf(event, guests);
  const sizing: Sizing = { table, guests, waves: waveFigures(event, guests.waves), grid, shapeOf: shapes(event, guests, grid) };
  const dishes = table.courses.map((course) => planDish(sizing, course));
  return { dishes, diets: dietCovers(event, dishes), allergies: allergyCovers(event, dishes) };
}
