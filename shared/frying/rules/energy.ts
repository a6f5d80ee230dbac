/** What the heat balance of a batter needs: shares of water and water lost (kg/kg), temperatures °C, heat capacities kJ/kgK, latent heat kJ/kg. */
export interface BatterHeat {
  readonly water: number;
  readonly lost: number;
  readonly from: number;
  readonly to: number;
  readonly waterCp: number;
  readonly solidsCp: number;
  readonly latent: number;
}

/** Heat into a kilogram of batter, kJ: warming water and solids to the boil, then boiling off the water lost. First principles. */
export const batterHeat = (h: BatterHeat): number =>
  h.water * h.waterCp * (h.to - h.from) + (1 - h.water) * h.solidsCp * (h.to - h.from) + h.lost * h.latent;

/** Heat into a kilogram of frozen food, kJ: warming the ice, melting, then as batter from 0 °C. First principles. `iceCp` kJ/kgK, `fusion` kJ/kg. */
export const frozenHeat = (h: BatterHeat, iceCp: number, fusion: number): number =>
  h.water * (iceCp * -h.from + fusion + h.waterCp * h.to) + (1 - h.water) * h.solidsCp * (h.to - h.from) + h.lost * h.latent;

/** Kilojoules per kilogram in one of a unit of heat per mass; null when the unit is unknown. */
export function kjPerKg(value: number, unit: string): number | null {
  const factors: Readonly<Record<string, number>> = { 'kJ/kg': 1, 'MJ/kg': 1000, 'kWh/kg': 3600, 'Wh/kg': 3.6, 'Wh/lb': 3.6 / 0.45359237, 'kWh/lb': 3600 / 0.45359237, 'Btu/lb': 2.326 };
  const factor = factors[unit];
  return factor === undefined ? null : value * factor;
}
