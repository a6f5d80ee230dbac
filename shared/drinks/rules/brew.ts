/** Water to put in for so much served, L: (served + boiled off) / (1 − dose × absorbed / 1000); the leaf keeps the rest. g/L, mL/g. */
export const waterForServed = (served: number, gramsPerL: number, absorbMlPerG: number, evaporated: number): number =>
  (served + evaporated) / (1 - (gramsPerL * absorbMlPerG) / 1000);

/** Millilitres a gram of leaf keeps, by difference. Litres, grams. */
export const absorbed = (water: number, served: number, grams: number): number => ((water - served) * 1000) / grams;

/** Grams per litre. */
export const dose = (grams: number, litres: number): number => grams / litres;
