/** Rules of the room `buying` whose figures a person can open; the sentence of each is `rule.<id>` in the words. */
export const buyingRules = [
  'buying.asPurchased', 'buying.need', 'buying.missing', 'buying.covered', 'buying.packs', 'buying.own', 'buying.reserve', 'buying.cost', 'buying.total',
  'things.cups', 'things.each', 'things.rolls', 'things.bags', 'things.boxes', 'things.labels', 'things.water', 'things.people',
] as const;
