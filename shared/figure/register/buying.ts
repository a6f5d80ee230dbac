/** Rules of the room `buying` whose figures a person can open; the sentence of each is `rule.<id>` in the words. */
export const buyingRules = ['buying.asPurchased', 'buying.need'] as const;
