import { eventSchema, newEvent, type Event, type Recipe } from '../../../shared/event';

const numbers = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => i + 1);

/** How a dish waits in a kitchen that does as it is told: hot at 65 °C, cold at 4 °C, or on the counter. */
function waits(r: Recipe) {
  if (r.needsTemperatureControl && r.serveHot) return { place: 'hot', temperatureC: 65 } as const;
  if (r.needsTemperatureControl || r.brewing?.hot === false) return { place: 'cold', temperatureC: 4 } as const;
  return { place: 'counter' } as const;
}

/** Adults who drink about so many cups of the only drink in an afternoon. */
const drinkers = (cups: number): number => Math.ceil(cups / 3);

/**
 * An event with one dish, in a plain kitchen with room, rings, pots and helpers enough. Food is served in `portions` at one time; a drink is
 * poured all afternoon to as many adults as drink about `portions` cups.
 */
export function plainEvent(recipe: Recipe, portions: number): Event {
  const drink = recipe.brewing !== undefined;
  const fried = recipe.frying !== undefined;
  const blank = newEvent({ id: 'plain', title: 'Plain kitchen', day: '2026-06-06' });
  const { brewing } = recipe;
  const insulation = brewing?.hot !== true ? 'none' : recipe.needsTemperatureControl ? 'heated' : 'foam';
  return eventSchema.parse({
    ...blank,
    guests: { ...blank.guests, waves: blank.guests.waves.map((w) => ({ ...w, counts: { ...w.counts, adult: drink ? drinkers(portions) : portions } })) },
    menu: { dishes: [{ id: 'dish', recipe: recipe.id, served: drink ? { kind: 'throughout' } : { kind: 'fixed', at: 1080, portions }, holding: waits(recipe) }] },
    recipes: [recipe],
    kitchen: {
      burners: numbers(8).map((n) => ({ id: `ring-${n}`, name: `Ring ${n}`, kind: 'gas', ratedW: 4000 })),
      pots: numbers(6).map((n) => ({ id: `pot-${n}`, name: `Pot ${n}`, litres: 12, massKg: 2.2 })),
      pans: fried ? numbers(3).map((n) => ({ id: `pan-${n}`, name: `Pan ${n}`, shape: 'straight', rimMm: 400, depthMm: 200, oilLitres: 6, massKg: 3, burner: `ring-${n}` })) : [],
      stations: fried ? [{ id: 'line', name: 'Fry line', pans: numbers(3).map((n) => `pan-${n}`), dishes: ['dish'] }] : [],
      dispensers: drink ? numbers(3).map((n) => ({ id: `flask-${n}`, name: `Flask ${n}`, litres: 9, massKg: 4, insulation, fitForMilk: true, dish: 'dish' })) : [],
      ovens: 2, counterPlaces: 6, hotHoldC: 65, fridgeC: 4, coldLitres: 200, roomC: 20,
    },
    people: numbers(5).map((n) => ({ id: `helper-${n}`, name: `Helper ${n}`, roles: ['cook', 'fryer', 'tea', 'runner'], from: -8000, to: 1600, liftKg: 15 })),
    // Small cups that stand five minutes on the tray (both inside the ranges of the reference values): how hot a cup is handed over
    // (rule SC-03) is a matter of the house and the same for every hot drink, not of the recipe.
    houseFigures: [
      { figure: 'cup.minutes', value: 5, unit: 'min', why: 'Cups stand on the tray before they are handed over.' },
      { figure: 'cup.k', value: 2.5, unit: '1/h', why: 'Small open cups.' },
    ],
  });
}
