/** Rules of the room `menu` whose figures a person can open; the sentence of each is `rule.<id>` in the words. */
export const menuRules = [] as const;
