import { Big } from 'big.js';

/** What a field of the kitchen measures, by the unit it is stored in. */
export type StoredUnit = 'mm' | 'L' | 'kg' | '°C' | 'm' | 'W' | 'ml';

interface UsUnit {
  readonly unit: string;
  /** Stored value of one US unit. */
  readonly of: string;
  /** Reading of the US scale where the stored one is at zero. */
  readonly zero: string;
  readonly step: number;
  readonly decimals: number;
}

// Exact by definition: inch 25.4 mm, foot 0.3048 m, pound 0.45359237 kg (international yard and pound, 1959), US quart 57.75 cubic inches;
// international table Btu 1,055.05585262 J, so a Btu an hour is that over 3,600 W.
const us: Readonly<Record<StoredUnit, UsUnit>> = {
  mm: { unit: 'in', of: '25.4', zero: '0', step: 0.25, decimals: 2 },
  L: { unit: 'qt', of: '0.946352946', zero: '0', step: 0.25, decimals: 2 },
  kg: { unit: 'lb', of: '0.45359237', zero: '0', step: 0.25, decimals: 2 },
  ml: { unit: 'fl oz', of: '29.5735295625', zero: '0', step: 0.5, decimals: 1 },
  m: { unit: 'ft', of: '0.3048', zero: '0', step: 100, decimals: 0 },
  W: { unit: 'Btu/h', of: '0.2930710701722222222222222222222222222222', zero: '0', step: 500, decimals: 0 },
  '°C': { unit: '°F', of: '0.5555555555555555555555555555555555555556', zero: '32', step: 1, decimals: 1 },
};

const places = 12;

/** A stored value in US units: the unit's name, how to show a value, and how to store one. */
export function usMeasure(stored: StoredUnit): { readonly unit: string; readonly step: number; readonly decimals: number; readonly shown: (value: number) => number; readonly kept: (value: number) => number } {
  const { unit, of, zero, step, decimals } = us[stored];
  return {
    unit, step, decimals,
    shown: (value) => Number(new Big(value).div(of).plus(zero).round(places)),
    kept: (value) => Number(new Big(value).minus(zero).times(of).round(places)),
  };
}
