import { readFileSync } from 'node:fs';
import { eventSchema, type Event } from '../../shared/event';

const demo = (): Event => eventSchema.parse(JSON.parse(readFileSync(new URL('../../assets/app/demo/lantern-evening.brimful', import.meta.url), 'utf8')));

/**
 * The reference event of the speed figures: `guests` people in 8 waves, 12 dishes, about 120 jobs. Made from the demo's recipes and
 * kitchen, so that every room has real work; a large event gets the kitchen its host would hire.
 */
export function referenceEvent(guests = 100): Event {
  const base = demo();
  const perWave = Math.floor(guests / 8);
  const waves = Array.from({ length: 8 }, (_, i) => ({
    id: `w${i + 1}`, name: `Wave ${i + 1}`, from: 660 + 55 * i, to: 700 + 55 * i, turnout: { kind: 'known' as const },
    counts: { under1: 0, age1to3: 1, age4to6: 1, age7to9: Math.max(0, Math.round(perWave * 0.15) - 2), age10to12: 1, age13to17: 0, olderAdult: 2, adult: perWave - Math.max(0, Math.round(perWave * 0.15) - 2) - 5 },
    stay: { shortest: 45, usual: 90, longest: 150 },
  }));
  const meals = base.menu.dishes.filter((d) => base.recipes.find((r) => r.id === d.recipe)?.frying === undefined && base.recipes.find((r) => r.id === d.recipe)?.brewing === undefined);
  const extra = Array.from({ length: Math.max(0, 12 - base.menu.dishes.length) }, (_, i) => {
    const from = meals[i % meals.length];
    if (from === undefined) throw new Error('the demo has no meal dishes');
    return { ...from, id: `${from.id}-${i + 2}` };
  });
  const event: Event = { ...base, guests: { ...base.guests, headcount: { adults: null, children: null }, waves }, menu: { ...base.menu, dishes: [...base.menu.dishes, ...extra].slice(0, 12) } };
  return guests <= 200 ? event : { ...event, ...hired(base) };
}

const many = <T extends { readonly id: string; readonly name: string }>(things: readonly T[], times: number): T[] =>
  Array.from({ length: times }, (_, i) => things.map((t) => (i === 0 ? t : { ...t, id: `${t.id}-${i + 1}`, name: `${t.name} ${i + 1}` }))).flat();

/** A hired kitchen: 20 pans at 4 stations, each on its own ring; pots and urns of 40 to 100 litres; 44 helpers. */
function hired(base: Event): Pick<Event, 'kitchen' | 'people'> {
  const { kitchen } = base;
  const pans = many(kitchen.pans, 10).map((p) => ({ ...p, rimMm: 700, depthMm: 260, oilLitres: 22, massKg: 9, burner: `ring-of-${p.id}` }));
  const rings = pans.map((p) => ({ ...kitchen.burners[0]!, id: p.burner, name: `Ring of ${p.name}`, ratedW: 18000 }));
  const burners = [...rings, ...many(kitchen.burners.map((b) => ({ ...b, ratedW: 12000 })), 4)];
  const stations = kitchen.stations.flatMap((s) => [0, 1].map((half) => ({
    ...s, id: `${s.id}-${half + 1}`, name: `${s.name} ${half + 1}`, pans: pans.filter((p) => s.pans.some((id) => p.id === id || p.id.startsWith(`${id}-`))).slice(half * 5, half * 5 + 5).map((p) => p.id),
  })));
  return {
    kitchen: {
      ...kitchen, pans, burners, stations, pots: many(kitchen.pots.map((p) => ({ ...p, litres: 50, massKg: 9 })), 4), dispensers: many(kitchen.dispensers.map((d) => ({ ...d, litres: 100, massKg: 20 })), 3),
      bowlLitres: 40, ovens: 6, counterPlaces: 40, coldLitres: 4000,
    },
    people: many(base.people, 11),
  };
}
