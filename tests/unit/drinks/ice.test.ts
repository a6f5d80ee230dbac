import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { drinksNeeds } from '../../../shared/drinks';
import { settle } from '../../../shared/household';
import { iceKg } from '../../../shared/kitchen';
import { figuresIn, wordFaults, workingFaults } from '../frying/fry-event';
import { drinkEvent, drinksOf } from './drink-event';

const iced = (kitchen: Record<string, unknown>, adults = 40) => drinksOf(drinkEvent({ water: true, adults, kitchen: { iceTubLitres: 40, waterC: 25, ...kitchen } })).drinks;

describe('ice for cold drinks', () => {
  it('is planned only where they stand in tubs, and only for what is cold', () => {
    expect(iced({ iceTubLitres: undefined }).ice).toBeNull();
    expect(iced({}).ice!.drinks.map((d) => d.drink)).toEqual(['water-jug']);
  });
  it('takes the litres from the tap to the table, by the published first-principles sum, and half as much again', () => {
    const { ice, totals } = iced({});
    const litres = totals.find((t) => t.drink === 'water-jug')!.brewed.value;
    expect(ice!.kg.value).toBeCloseTo(iceKg(litres, 25, settle(drinkEvent(), 'drink.coldC').value) * 1.5, 6);
  });
  it('is bought: the need is no less than the ice, within a tenth of a kilogram', () => {
    const drinks = iced({});
    const need = drinksNeeds(drinks).filter((n) => n.ingredient === 'ice').map((n) => Number(n.amount.amount));
    expect(need).toHaveLength(1);
    expect(need[0]! - drinks.ice!.kg.value).toBeGreaterThanOrEqual(-1e-9);
    expect(need[0]! - drinks.ice!.kg.value).toBeLessThan(0.1);
  });
  it('fills tubs that hold drinks and ice, and none too many', () => {
    fc.assert(fc.property(fc.integer({ min: 5, max: 120 }), fc.integer({ min: 1, max: 80 }), (tub, adults) => {
      const { ice, totals } = iced({ iceTubLitres: tub }, adults);
      const all = ice!.kg.value + totals.find((t) => t.drink === 'water-jug')!.brewed.value;
      expect(ice!.tubs.value * tub).toBeGreaterThanOrEqual(all - 1e-6);
      expect((ice!.tubs.value - 1) * tub).toBeLessThan(all);
    }), { numRuns: 40 });
  });
  it('is nothing when the tap is as cold as the drink', () => expect(iced({ waterC: 2 }).ice!.kg.value).toBe(0));
  it('shows its working', () => {
    const all = figuresIn(iced({}).ice);
    expect(all.length).toBeGreaterThan(2);
    expect(all.flatMap(workingFaults)).toEqual([]);
    expect(all.flatMap(wordFaults)).toEqual([]);
  });
});
