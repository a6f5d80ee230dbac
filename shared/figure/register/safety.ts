/** Rules of the room `safety` whose figures a person can open; the sentence of each is `rule.<id>` in the words. */
export const safetyRules = [] as const;
