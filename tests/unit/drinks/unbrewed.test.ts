import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drinksNeeds } from '../../../shared/drinks';
import type { Event } from '../../../shared/event';
import { plan } from '../../../shared/plan';
import { drinkEvent, drinksOf, hob } from './drink-event';

/** Grams of one ingredient in all that is to be bought for the drinks. */
const gramsOf = (event: Event, ingredient: string): number =>
  drinksNeeds(drinksOf(event).drinks).filter((n) => n.ingredient === ingredient).reduce((sum, n) => sum + n.amount.amount.toNumber(), 0);
const wantedLitres = (event: Event): number => (drinksOf(event).menu.dishes.find((d) => d.id === 'tea')!.portions.value * 150) / 1000;

describe('shopping is for what the menu wants, not for what the kitchen can brew', () => {
  it.each([
    ['no kitchen yet', { pots: [], burners: [], dispensers: [] }],
    ['no burner', { burners: [] }],
  ])('%s: leaf and ginger for every litre wanted', (_, kitchen) => {
    const event = drinkEvent(kitchen);
    const { drinks } = drinksOf(event);
    expect(drinks.rounds).toEqual([]);
    expect(drinks.unbrewed).toHaveLength(1);
    const litres = wantedLitres(event);
    expect(litres).toBeGreaterThan(5);
    expect(drinks.unbrewed[0]!.litres).toBeCloseTo(litres, 6);
    // By hand: ginger 150 g for 10 L; leaf 9.2 g on each litre of water, of which 2 % stay in the strainer and 4.2 ml in each gram of leaf.
    expect(gramsOf(event, 'ginger-root')).toBeCloseTo(15 * litres, 6);
    const { strainLoss } = event.recipes[0]!.brewing!;
    expect(gramsOf(event, 'tea-leaf')).toBeCloseTo((9.2 * litres) / (1 - strainLoss) / (1 - (9.2 * 4.2) / 1000), 0);
  });

  it('is the list of the whole plan too', () => {
    const ids = plan(drinkEvent({ pots: [], burners: [], dispensers: [] })).buying.lines.map((l) => l.ingredient);
    expect(ids).toEqual(expect.arrayContaining(['tea-leaf', 'ginger-root']));
  });

  it('whatever the kitchen, what is bought is enough for all that is wanted', () => {
    fc.assert(fc.property(fc.integer({ min: 0, max: 160 }), fc.integer({ min: 1, max: 12 }), fc.integer({ min: 0, max: 3000 }), fc.integer({ min: 0, max: 12 }), (adults, pot, watts, flask) => {
      const event = drinkEvent({
        adults, pots: [{ id: 'pot', name: 'Pot', litres: pot }], burners: watts < 300 ? [] : [{ ...hob, ratedW: watts }],
        dispensers: flask === 0 ? [] : [{ id: 'flask', name: 'Flask', litres: flask, massKg: 2, insulation: 'foam', dish: 'tea' }],
      });
      expect(gramsOf(event, 'ginger-root')).toBeGreaterThanOrEqual(15 * wantedLitres(event) - 1e-6);
    }), { numRuns: 60 });
  });

  it('nothing is added where everything is brewed', () => expect(drinksOf(drinkEvent()).drinks.unbrewed).toEqual([]));
  it('what nobody gets is told as no litres served, never as less than none', () => {
    const total = drinksOf(drinkEvent({ pots: [], burners: [], dispensers: [] })).drinks.totals[0]!;
    expect(Object.is(total.served.value, 0) || total.served.value > 0).toBe(true);
  });
});
