/** British thermal units to raise so many pounds of water by so many °F; the definition of the unit. */
export const waterHeatBtu = (pounds: number, riseF: number): number => pounds * riseF;

/** Minutes to heat liquid and pot: (V ρ c + C) ΔT / (P η). Litres, kJ/LK, kJ/K, kelvin, useful kW. First principles. */
export const heatMinutes = (litres: number, cRho: number, potHeat: number, rise: number, usefulKw: number): number =>
  ((litres * cRho + potHeat) * rise) / usefulKw / 60;

/** Kilograms boiled off in an hour by so many net kW; `latent` in kJ/kg. First principles; depends on power and time, not on size. */
export const boilOffKgPerHour = (netKw: number, latent: number): number => (3600 * netKw) / latent;

/** Share of a burner's energy that reaches the pot. */
export const burnerShare = (useful: number, input: number): number => useful / input;

/** Kilograms of ice at 0 °C that cool water from T0 to Tf: m·4.186(T0 − Tf) / (334 + 4.186 Tf). First principles. */
export const iceKg = (waterKg: number, from: number, to: number): number => (waterKg * 4.186 * (from - to)) / (334 + 4.186 * to);
