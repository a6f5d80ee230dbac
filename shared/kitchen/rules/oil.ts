/** Density of frying oil at T °C, kg/m³: a straight line. Slope: Rodenbush et al., JAOCS 76:1415-1419, 1999 (to 110 °C, extrapolated above). */
export const oilDensity = (rho20: number, slope: number, celsius: number): number => rho20 - slope * (celsius - 20);

/** Volume after warming from T1 to T2, same unit as `coldVolume`: the mass stays. */
export const hotVolume = (coldVolume: number, densityCold: number, densityHot: number): number => (coldVolume * densityCold) / densityHot;

/** Mean heat capacity between two temperatures of cp = a + bT, kJ/kgK. */
export const meanCp = (a: number, b: number, t1: number, t2: number): number => a + (b * (t1 + t2)) / 2;

/** What is heated in a pan of oil. Power in kW, loss in kW/K, heat capacity in kJ/K, temperatures °C. */
export interface HeatUp {
  readonly heatCapacity: number;
  readonly power: number;
  readonly loss: number;
  readonly from: number;
  readonly to: number;
  readonly room: number;
}

/**
 * Seconds to heat oil and pan: C ΔT / P without loss; with loss to the room UA the exponential (C/UA) ln[(P − UA(T1 − Ta)) / (P − UA(T2 − Ta))].
 * Infinity when the burner cannot reach the temperature. First principles.
 */
export function heatUpSeconds(h: HeatUp): number {
  if (h.loss === 0) return (h.heatCapacity * (h.to - h.from)) / h.power;
  const left = h.power - h.loss * (h.to - h.room);
  if (left <= 0) return Infinity;
  return (h.heatCapacity / h.loss) * Math.log((h.power - h.loss * (h.from - h.room)) / left);
}
