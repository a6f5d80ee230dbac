/** Rules of the room `timeline` whose figures a person can open; the sentence of each is `rule.<id>` in the words. */
export const timelineRules = ['timeline.busy', 'gas.burner', 'gas.need', 'gas.wanted', 'gas.lasts'] as const;
