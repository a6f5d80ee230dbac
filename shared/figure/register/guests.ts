/** Rules of the room `guests` whose figures a person can open; the sentence of each is `rule.<id>` in the words. */
export const guestsRules = [] as const;
