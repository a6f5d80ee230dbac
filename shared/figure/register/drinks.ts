/** Rules of the room `drinks` whose figures a person can open; the sentence of each is `rule.<id>` in the words. */
export const drinksRules = [] as const;
