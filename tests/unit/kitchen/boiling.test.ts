import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { newEvent, type Event } from '../../../shared/event';
import { airPressure, boilingPoint } from '../../../shared/kitchen';
import { figuresIn, wordFaults, workingFaults } from '../frying/fry-event';
import { drinkEvent, drinksOf, flask } from '../drinks/drink-event';

const blank = newEvent({ id: 'height', title: 'Height', day: '2026-12-12' });
const at = (altitudeM: number, event: Event = blank): Event => ({ ...event, kitchen: { ...event.kitchen, altitudeM } });
const measured = (event: Event, figure: string, value: number): Event => ({ ...event, houseFigures: [{ figure, value, unit: 'degC', why: 'Measured here.' }] });

describe('the boiling point of a kitchen', () => {
  it('is that of the table at the sea, exactly', () => expect(boilingPoint(at(0)).value).toBe(100));
  it('falls with every step up and lies above it below the sea', () => {
    fc.assert(fc.property(fc.integer({ min: -400, max: 4990 }), fc.integer({ min: 1, max: 10 }), (metres, up) => {
      expect(boilingPoint(at(metres + up)).value).toBeLessThan(boilingPoint(at(metres)).value);
    }));
    expect(boilingPoint(at(-400)).value).toBeGreaterThan(100);
  });
  it('as measured by the household stands as it is', () => expect(boilingPoint(measured(at(1600), 'boil.C', 94.2)).value).toBe(94.2));
  it('shows its working down to the standard air', () => {
    for (const event of [at(0), at(2300), at(-100), measured(at(1600), 'boil.C', 94.2)]) {
      const all = figuresIn([boilingPoint(event), airPressure(event)]);
      expect(all.flatMap(workingFaults)).toEqual([]);
      expect(all.flatMap(wordFaults)).toEqual([]);
    }
  });
});

describe('drinks in the mountains', () => {
  const [low, high] = [drinksOf(drinkEvent()), drinksOf(at(2000, drinkEvent()))].map((x) => x.drinks);
  const perLitre = (d: typeof low) => d!.rounds[0]!.heatMinutes.value / d!.rounds[0]!.litres;
  it('come to the boil sooner: the rise is from the tap to the boiling point there', () => {
    const round = high!.rounds[0]!;
    const pot = round.pot === 'pot-5' ? 1.4 : round.pot === 'pot-10' ? 2 : 1.5;
    const kw = round.burner === 'hob' ? 1.68 : 1.2;
    expect(round.heatMinutes.value).toBeCloseTo(((round.waterLitres.value * 4.18 + pot * 0.49) * (boilingPoint(at(2000)).value - 15)) / kw / 60, 9);
    expect(perLitre(high)).toBeLessThan(perLitre(low));
  });
  it('go into the flask as much cooler as water boils cooler', () => {
    const first = (d: typeof low) => d!.dispensers[0]!.celsius[0]!;
    expect(first(low) - first(high)).toBeGreaterThan(5);
    expect(first(low) - first(high)).toBeLessThan(8);
  });
  it('are not held hotter than they boil', () => {
    const urn = drinksOf(at(4800, drinkEvent({ tea: { serveAboveC: 60 }, dispensers: [{ ...flask, insulation: 'heated' }] }))).drinks;
    expect(Math.max(...urn.dispensers[0]!.celsius)).toBeLessThanOrEqual(boilingPoint(at(4800)).value);
  });
  it('as warm as the household measured them stay so', () => {
    const kept = drinksOf(measured(at(2000, drinkEvent()), 'brew.strainedC', 91)).drinks.dispensers[0]!.celsius[0]!;
    expect(kept).toBeGreaterThan(high!.dispensers[0]!.celsius[0]!);
  });
});
