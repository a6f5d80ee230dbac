/**
 * Branded numbers: a bare number cannot be passed where minutes or litres are meant.
 * The constructors below are the only casts in `shared/`.
 */

/** Minutes from midnight of the event's day. Whole or fractional; may be negative (the day before) or above 1440 (past midnight). */
export type Minutes = number & { readonly __unit: 'min' };
/** Litres, zero or more. */
export type Litres = number & { readonly __unit: 'L' };
/** Kilograms, zero or more. */
export type Kilograms = number & { readonly __unit: 'kg' };
/** Degrees Celsius. */
export type Celsius = number & { readonly __unit: 'degC' };
/** Watts. */
export type Watts = number & { readonly __unit: 'W' };

function finite(value: number, name: string): number {
  if (!Number.isFinite(value)) throw new RangeError(`${name} must be a finite number, got ${value}`);
  return value;
}

/** A count of minutes. Unit: minutes. Range: any finite number. @throws RangeError when not finite. */
// oxlint-disable-next-line typescript/no-unsafe-type-assertion -- brand constructor
export const minutes = (value: number): Minutes => finite(value, 'minutes') as Minutes;
/** A volume. Unit: litres. Range: any finite number. @throws RangeError when not finite. */
// oxlint-disable-next-line typescript/no-unsafe-type-assertion -- brand constructor
export const litres = (value: number): Litres => finite(value, 'litres') as Litres;
/** A mass. Unit: kilograms. Range: any finite number. @throws RangeError when not finite. */
// oxlint-disable-next-line typescript/no-unsafe-type-assertion -- brand constructor
export const kilograms = (value: number): Kilograms => finite(value, 'kilograms') as Kilograms;
/** A temperature. Unit: degrees Celsius. Range: any finite number. @throws RangeError when not finite. */
// oxlint-disable-next-line typescript/no-unsafe-type-assertion -- brand constructor
export const celsius = (value: number): Celsius => finite(value, 'celsius') as Celsius;
/** A power. Unit: watts. Range: any finite number. @throws RangeError when not finite. */
// oxlint-disable-next-line typescript/no-unsafe-type-assertion -- brand constructor
export const watts = (value: number): Watts => finite(value, 'watts') as Watts;
