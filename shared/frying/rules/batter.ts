/** Share of water in a batter: water of flour and greens and the water added, over all. Masses kg. */
export const batterMoisture = (flour: number, flourMoisture: number, water: number, greens: number, greensMoisture: number, other: number): number =>
  (flour * flourMoisture + water + greens * greensMoisture) / (flour + water + greens + other);

/** Density of a batter, kg/m³: volumes of water and solids add up, air takes its share on top. */
export const batterDensity = (water: number, rhoWater: number, rhoSolids: number, air: number): number => (1 - air) / (water / rhoWater + (1 - water) / rhoSolids);

/** Water per flour by mass from the flour's share of the two. */
export const waterPerFlour = (flourShare: number): number => (1 - flourShare) / flourShare;
