import { describe, expect, it } from 'vitest';
import { newEvent } from '../../shared/event';
import { airPressure, boilingPoint } from '../../shared/kitchen';

const blank = newEvent({ id: 'height', title: 'Height', day: '2026-12-12' });
const at = (altitudeM: number) => ({ ...blank, kitchen: { ...blank.kitchen, altitudeM } });

/** Metres and °C: the table of the article "High-altitude cooking" of the English Wikipedia, there credited to NASA and NOAA. Printed to the half degree or tenth. */
const encyclopaedia = [[0, 100], [150, 99.5], [305, 99], [610, 98], [1524, 95], [1829, 94], [2438, 91.9], [3048, 89.8], [3658, 87.6], [4267, 85.5], [4572, 84.5]] as const;
/** Feet and °F: US Department of Agriculture, Food Safety and Inspection Service, "High altitude cooking and food safety" (2,000 ft as reprinted by files.foodmate.com; the rest as commonly reprinted). Whole degrees. */
const inspection = [[2000, 208], [5000, 203], [7500, 198], [10000, 194]] as const;
/** Metres and kPa: U.S. Standard Atmosphere 1976, main table (from memory). */
const standardAir = [[0, 101.325], [1000, 89.876], [2000, 79.501], [3000, 70.121], [5000, 54.048]] as const;

describe('the boiling point of water by height above the sea', () => {
  it.each(encyclopaedia)('at %i m is %f °C', (metres, celsius) => {
    expect(Math.abs(boilingPoint(at(metres)).value - celsius)).toBeLessThan(0.3);
  });
  it.each(inspection)('at %i ft is %i °F', (feet, fahrenheit) => {
    expect(Math.abs(boilingPoint(at(feet * 0.3048)).value * 1.8 + 32 - fahrenheit)).toBeLessThan(0.8);
  });
});

describe('the pressure of the standard air', () => {
  it.each(standardAir)('at %i m is %f kPa', (metres, kpa) => expect(Math.abs(airPressure(at(metres)).value / kpa - 1)).toBeLessThan(0.001));
});
