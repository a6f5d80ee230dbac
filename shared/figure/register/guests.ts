/** Rules of the room `guests` whose figures a person can open; the sentence of each is `rule.<id>` in the words. */
export const guestsRules = [
  'guests.adults', 'guests.children', 'guests.expected', 'guests.expectedShare', 'guests.expectedRange', 'guests.planned',
  'guests.plannedSure', 'guests.plannedLarge', 'guests.spread', 'guests.wavePeople', 'guests.expectedKnown', 'guests.rangeMean', 'guests.rangeSpread', 'guests.rangeHigh', 'guests.meanStay', 'guests.window', 'guests.since', 'guests.peak', 'guests.presentInWave', 'guests.presentChance', 'guests.minutesSpent',
] as const;
