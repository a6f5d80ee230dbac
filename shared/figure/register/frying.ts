/** Rules of the room `frying` whose figures a person can open; the sentence of each is `rule.<id>` in the words. */
export const fryingRules = [] as const;
