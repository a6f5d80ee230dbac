/** The standard air: pressure and temperature at sea level (kPa, K), fall of temperature with height (K/m), exponent g M / (R L). */
export interface StandardAir {
  readonly seaKpa: number;
  readonly seaK: number;
  readonly lapse: number;
  readonly exponent: number;
}

/** Pressure of the air at a height, kPa: p₀ (1 − L h / T₀)^(g M / R L). U.S. Standard Atmosphere 1976 (ISO 2533), good below 11,000 m. */
export const airKpa = (air: StandardAir, metres: number): number => air.seaKpa * (1 - (air.lapse * metres) / air.seaK) ** air.exponent;

/** Antoine constants of water for millimetres of mercury, degrees Celsius and common logarithms. */
export interface Antoine {
  readonly a: number;
  readonly b: number;
  readonly c: number;
}

/** Millimetres of mercury in a kilopascal: 760 / 101.325 (definition). */
export const mmHgPerKpa = 760 / 101.325;

/** Temperature at which water boils under a pressure, °C: B / (A − log₁₀ p) − C. Antoine's equation. */
export const boilsAt = ({ a, b, c }: Antoine, kpa: number): number => b / (a - Math.log(kpa * mmHgPerKpa) / Math.LN10) - c;
