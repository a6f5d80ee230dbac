/** Seconds from put-in to put-in: fry and handling, or as long as the burner needs for the heat. Load kg, heat kJ/kg, net power kW. */
export const cycleSeconds = (fry: number, handling: number, load: number, heat: number, power: number): number => Math.max(fry + handling, (load * heat) / power);

/** Kilograms of batter per hour of a load every so many seconds. */
export const kgPerHour = (load: number, seconds: number): number => (load * 3600) / seconds;

/** Kilograms of batter per hour the burner can fry. */
export const kgPerHourByPower = (power: number, heat: number): number => (power * 3600) / heat;
