/** A load going into hot oil. Mass kg, heat kJ/kg, power net of losses kW, heat capacity of oil and pan kJ/K, times s. */
export interface Dip {
  readonly load: number;
  readonly heat: number;
  readonly power: number;
  readonly heatCapacity: number;
  readonly tau: number;
  readonly fryTime: number;
}

/**
 * How far the oil cools on loading, K, and when it is coolest, s. The load takes heat as K exp(−t/τ); while that is more than the burner
 * gives, the oil cools. Checked against step-by-step integration (reference check DROP-02).
 */
export function dip(d: Dip): { readonly drop: number; readonly at: number } {
  const peak = (d.load * d.heat) / (d.tau * (1 - Math.exp(-d.fryTime / d.tau)));
  const at = Math.max(0, Math.min(d.fryTime, d.tau * Math.log(peak / d.power)));
  return { drop: (peak * d.tau * (1 - Math.exp(-at / d.tau)) - d.power * at) / d.heatCapacity, at };
}

/** The fall if the burner gave nothing, K. */
export const worstDrop = (load: number, heat: number, heatCapacity: number): number => (load * heat) / heatCapacity;

/** Seconds to bring oil and pan back up by so many kelvin. */
export const recoverySeconds = (heatCapacity: number, rise: number, power: number): number => (heatCapacity * rise) / power;
