import { Big } from 'big.js';

/** What a unit measures. Amounts convert freely inside a dimension; across mass and volume only with a density. */
export type Dimension = 'mass' | 'volume' | 'count';

/** Every unit an amount may carry, in files and on screen. US measures are the exact legal definitions; `cup` is the US cup. */
export const unitIds = [
  'g', 'kg', 'oz', 'lb',
  'ml', 'L', 'tsp', 'tbsp', 'floz', 'cup', 'pint', 'quart', 'gallon', 'metricCup', 'metricTbsp', 'metricTsp',
  'piece', 'bunch', 'clove', 'slice', 'pinch',
] as const;
/** Identifier of a unit, as written in event files. */
export type UnitId = (typeof unitIds)[number];

interface UnitRow {
  readonly dimension: Dimension;
  /** Exact factor to the base unit of the dimension: gram, millilitre, or one. */
  readonly toBase: Big;
}

const row = (dimension: Dimension, factor: string): UnitRow => ({ dimension, toBase: new Big(factor) });

/**
 * Exact factors. Mass: 1 lb = 453.59237 g (international yard and pound agreement, 1959). Volume: US gallon = 231 cubic inches,
 * inch = 25.4 mm, so 3785.411784 ml (NIST Handbook 44, Appendix C). Metric kitchen measures 250 / 15 / 5 ml (common practice, no source).
 */
const table: Readonly<Record<UnitId, UnitRow>> = {
  g: row('mass', '1'),
  kg: row('mass', '1000'),
  oz: row('mass', '28.349523125'),
  lb: row('mass', '453.59237'),
  ml: row('volume', '1'),
  L: row('volume', '1000'),
  tsp: row('volume', '4.92892159375'),
  tbsp: row('volume', '14.78676478125'),
  floz: row('volume', '29.5735295625'),
  cup: row('volume', '236.5882365'),
  pint: row('volume', '473.176473'),
  quart: row('volume', '946.352946'),
  gallon: row('volume', '3785.411784'),
  metricCup: row('volume', '250'),
  metricTbsp: row('volume', '15'),
  metricTsp: row('volume', '5'),
  piece: row('count', '1'),
  bunch: row('count', '1'),
  clove: row('count', '1'),
  slice: row('count', '1'),
  pinch: row('count', '1'),
};

/** The dimension of a unit: mass, volume or count. */
export const dimensionOf = (unit: UnitId): Dimension => table[unit].dimension;

/** Exact factor from a unit to the base of its dimension (g, ml, or one). Source: NIST Handbook 44, Appendix C. */
export const baseFactor = (unit: UnitId): Big => table[unit].toBase;

/** True when a text is the id of a unit. */
export const isUnitId = (text: string): text is UnitId => Object.hasOwn(table, text);
