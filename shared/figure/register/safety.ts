/** Rules of the room `safety` whose figures a person can open; the sentence of each is `rule.<id>` in the words. */
export const safetyRules = ['safety.hours', 'safety.trayDepth', 'safety.leftoverDays', 'safety.acidShare', 'safety.cup', 'safety.potWeight'] as const;
