import { readFileSync } from 'node:fs';
import { eventSchema, type Event } from '../../shared/event';

const demo = (): Event => eventSchema.parse(JSON.parse(readFileSync(new URL('../../assets/app/demo/lantern-evening.brimful', import.meta.url), 'utf8')));

/**
 * The reference event of the speed figures: `guests` people in 8 waves, 12 dishes, about 120 jobs. Made from the demo's recipes and
 * kitchen, so that every room has real work; more guests get more fry stations, pots and helpers.
 */
export function referenceEvent(guests = 100, copies = 1): Event {
  const base = demo();
  const perWave = Math.floor(guests / 8);
  const waves = Array.from({ length: 8 }, (_, i) => ({
    id: `w${i + 1}`, name: `Wave ${i + 1}`, from: 660 + 55 * i, to: 700 + 55 * i, turnout: { kind: 'known' as const },
    counts: { under1: 0, age1to3: 1, age4to6: 1, age7to9: Math.max(0, Math.round(perWave * 0.15) - 2), age10to12: 1, age13to17: 0, olderAdult: 2, adult: perWave - Math.max(0, Math.round(perWave * 0.15) - 2) - 5 },
    stay: { shortest: 45, usual: 90, longest: 150 },
  }));
  const meals = base.menu.dishes.filter((d) => base.recipes.find((r) => r.id === d.recipe)?.frying === undefined && base.recipes.find((r) => r.id === d.recipe)?.brewing === undefined);
  const extra = Array.from({ length: Math.max(0, 12 * copies - base.menu.dishes.length) }, (_, i) => {
    const from = meals[i % meals.length];
    if (from === undefined) throw new Error('the demo has no meal dishes');
    return { ...from, id: `${from.id}-${i + 2}` };
  });
  return { ...base, guests: { ...base.guests, headcount: { adults: null, children: null }, waves }, menu: { ...base.menu, dishes: [...base.menu.dishes, ...extra] } };
}
