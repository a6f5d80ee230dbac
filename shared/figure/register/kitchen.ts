/** Rules of the room `kitchen` whose figures a person can open; the sentence of each is `rule.<id>` in the words. */
export const kitchenRules = [] as const;
