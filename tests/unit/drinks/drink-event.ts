import { planDrinks, type DrinksPlan } from '../../../shared/drinks';
import { eventSchema, type Event } from '../../../shared/event';
import { planGuests } from '../../../shared/guests';
import { planKitchen } from '../../../shared/kitchen';
import { planMenu, type MenuPlan } from '../../../shared/menu';

/** What a test may change of the drinks event below. */
export interface DrinkChange {
  readonly adults?: number;
  readonly tea?: Record<string, unknown>;
  readonly dispensers?: readonly Record<string, unknown>[];
  readonly pots?: readonly Record<string, unknown>[];
  readonly burners?: readonly Record<string, unknown>[];
  readonly kitchen?: Record<string, unknown>;
  readonly water?: boolean;
  readonly teaLines?: readonly Record<string, unknown>[];
}
export const flask = { id: 'flask', name: 'Flask', litres: 9.5, massKg: 4, insulation: 'foam', dish: 'tea' };
export const hob = { id: 'hob', name: 'Hob', kind: 'induction', ratedW: 2000 };

/** Tea, and perhaps water, for adults who come from 12:00 to 14:00. */
export function drinkEvent(change: DrinkChange = {}): Event {
  const teaLines = change.teaLines ?? [{ ingredient: 'water', amount: { amount: '10.6', unit: 'L' } }, { ingredient: 'tea-leaf', amount: { amount: '98', unit: 'g' } }, { ingredient: 'ginger-root', amount: { amount: '150', unit: 'g' } }];
  const tea = {
    id: 'tea', name: 'Tea', role: 'hotDrink', yield: { amount: { amount: '10', unit: 'L' }, portions: 66 }, ingredients: teaLines,
    brewing: { method: 'infuse', doseGPerL: 9.2, doseIngredient: 'tea-leaf', absorbMlPerG: 4.2, steepMinutes: 5, hot: true, caffeinated: true, goodForMinutes: 120, serveAboveC: 65, cupMl: 150, ...change.tea },
  };
  const water = {
    id: 'water-jug', name: 'Water', role: 'water', yield: { amount: { amount: '5', unit: 'L' }, portions: 28 }, ingredients: [{ ingredient: 'water', amount: { amount: '5', unit: 'L' } }],
    brewing: { method: 'water', strainLoss: 0, potFill: 0.9, hot: false, goodForMinutes: 480, cupMl: 177 },
  };
  const recipes = change.water === true ? [tea, water] : [tea];
  return eventSchema.parse({
    format: 'brimful-event/1', id: 'drinks', title: 'Drinks', day: '2026-12-12', opensAt: 690, closesAt: 1020,
    guests: { waves: [{ id: 'noon', name: 'Noon', from: 720, to: 840, counts: { adult: change.adults ?? 40 }, stay: { shortest: 60, usual: 90, longest: 150 } }] },
    menu: { dishes: recipes.map((r) => ({ id: r.id, recipe: r.id })) }, recipes,
    kitchen: {
      burners: change.burners ?? [hob, { ...hob, id: 'ring', kind: 'gas', ratedW: 3000 }], pots: change.pots ?? [{ id: 'pot-10', name: 'Pot', litres: 10, massKg: 2 }, { id: 'pot-5', name: 'Small pot', litres: 5, massKg: 1.4 }, { id: 'pot-8', name: 'Pot 8', litres: 8 }],
      dispensers: change.dispensers ?? [flask, ...(change.water === true ? [{ ...flask, id: 'jug', litres: 6, insulation: 'none', dish: 'water-jug' }] : [])], ...change.kitchen,
    },
  });
}

export function drinksOf(event: Event): { drinks: DrinksPlan; menu: MenuPlan } {
  const menu = planMenu(event, planGuests(event));
  return { drinks: planDrinks(event, menu, planKitchen(event)), menu };
}
