/** Dry-matter balance of frying: fried mass per batter mass, water lost and oil gained per batter mass. Water shares wet basis, fat shares of the dry matter. */
export function massBalance(batterWater: number, batterFat: number, productWater: number, productFat: number): { readonly yield: number; readonly waterLost: number; readonly oilGained: number } {
  const ratio = ((1 - batterWater) * (1 - batterFat)) / ((1 - productWater) * (1 - productFat));
  return { yield: ratio, waterLost: batterWater - ratio * productWater, oilGained: ratio * (1 - productWater) * productFat - (1 - batterWater) * batterFat };
}

/** Litres of oil the food takes up: batter kg × kg per kg ÷ density kg/L. */
export const uptakeLitres = (batterKg: number, uptake: number, kgPerL: number): number => (batterKg * uptake) / kgPerL;

/** Litres of oil to buy: fills and the uptake with what drips and splashes. */
export const purchaseLitres = (fills: number, uptake: number, drip: number): number => fills + uptake * (1 + drip);
