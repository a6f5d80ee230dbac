/** Rules of the room `frying` whose figures a person can open; the sentence of each is `rule.<id>` in the words. */
export const fryingRules = [
  'fry.pieceMass', 'fry.oilMass', 'piece.diameter', 'fry.netPower', 'fry.energyPerKgBatter', 'fry.heatOfBatter', 'fry.waterLost', 'fry.crustHeat', 'fry.heatCapacity', 'fry.turn', 'fry.turnMinutes', 'fry.space', 'fry.radii', 'fry.tight', 'fry.sharing', 'fry.fullBatches', 'fry.bowlHolds', 'fry.dipLimit', 'fry.heatLimit',
  'fry.oilRatio', 'fry.rimLimit', 'fry.load', 'fry.cycle', 'fry.dip', 'fry.worstCaseDrop', 'fry.throughput', 'fry.batches', 'fry.bowls', 'fry.pieces', 'fry.batter', 'fry.fill', 'fry.uptake', 'fry.fills',
  'fry.uptakes', 'fry.oilPurchase', 'fry.heatUp', 'fry.loadedOil', 'fry.bound', 'fry.unmet', 'fry.unmetAlone', 'fry.unmetWindows', 'fry.windowBatches', 'fry.windowMinutes', 'fry.unmetGap', 'fry.waiting', 'fry.waitingEach', 'fry.saved', 'fry.cooled', 'fry.coolTime', 'fry.keepHot', 'fry.pauseGas', 'fry.heatAgain', 'fry.oilWork', 'fry.oilLeft', 'fry.oilChanges',
] as const;
