import { describe, expect, it } from 'vitest';
import { formatsFor } from '../../../shared/event';
import { sayMessage } from '../../../shared/words';
import { drinkEvent, drinksOf } from './drink-event';

const pot = (id: string, litres: number) => ({ id, name: `Pot ${id}`, litres, massKg: litres / 5 });
const kitchens = { one: [pot('a', 12)], two: [pot('a', 12), pot('b', 5)], three: [pot('a', 12), pot('b', 8), pot('c', 5)] };

describe.each(Object.entries(kitchens))('a hot drink without a flask, %s to cook with', (_, pots) => {
  it.each([20, 40, 68, 110])('is not poured away while %i adults go without', (adults) => {
    const event = drinkEvent({ adults, dispensers: [], pots });
    const { drinks, menu } = drinksOf(event);
    const [total] = drinks.totals;
    if (total === undefined) throw new Error('tea is planned');
    const wanted = ((menu.dishes[0]?.portions.value ?? 0) * 150) / 1000;
    expect(total.served.value + total.unmetLitres).toBeCloseTo(wanted, 6);
    expect(total.brewed.value).toBeCloseTo(total.served.value + total.leftLitres, 6);
    expect(total.leftLitres).toBeLessThanOrEqual(0.05 * wanted + 0.3);
    // With pots enough to brew while one is poured from, nobody of so many goes without.
    expect(total.unmetLitres).toBeLessThanOrEqual(pots.length === 3 && adults <= 68 ? 0 : wanted / 2);
    expect(drinks.rounds.length).toBeLessThanOrEqual(10);
  });
  it('says what to do first: which flask it is for', () => {
    const event = drinkEvent({ adults: 68, dispensers: [], pots });
    const words = drinksOf(event).drinks.problems.map((p) => sayMessage(formatsFor(event.preferences, event.day), p));
    expect(words.length).toBeGreaterThan(0);
    for (const w of words) expect(w).toMatch(/^First say which flask (or jug )?Tea is for: without one it is poured from Pot a/);
  });
});

describe('a drink poured from a pot', () => {
  it('names the minutes until it is cooler than it should be served', () => {
    const { drinks } = drinksOf(drinkEvent({ dispensers: [] }));
    const [cool] = drinks.problems;
    if (cool?.id !== 'drinks.problem.coolFromPot') throw new Error('an open pot cools');
    const at = drinks.dispensers[0]?.celsius ?? [];
    expect(at[cool.params.minutes - 1] ?? 0).toBeGreaterThanOrEqual(cool.params.celsius);
    expect(at[cool.params.minutes] ?? 100).toBeLessThan(cool.params.celsius);
  });
  it('says nothing where it has no limit', () => expect(drinksOf(drinkEvent({ dispensers: [], tea: { serveAboveC: null } })).drinks.problems).toEqual([]));
});
