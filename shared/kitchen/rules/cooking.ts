/** Cooked over raw mass when only water is taken up: (1 − raw moisture) / (1 − cooked moisture). Dry-matter balance. */
export const yieldFromMoisture = (raw: number, cooked: number): number => (1 - raw) / (1 - cooked);

/** Moisture of the cooked food that a yield implies, from raw moisture. Dry-matter balance. */
export const impliedMoisture = (raw: number, yieldRatio: number): number => 1 - (1 - raw) / yieldRatio;

/** Kilograms of water to bring rice from raw to cooked moisture, plus what boils away (kg ≈ L). Dry-matter balance. */
export const riceWaterKg = (riceKg: number, raw: number, cooked: number, evaporated: number): number => (riceKg * (cooked - raw)) / (1 - cooked) + evaporated;

/** Soaked over dry mass of pulses from the share of water taken up. */
export const soakFactor = (uptake: number): number => 1 + uptake;
