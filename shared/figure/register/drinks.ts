/** Rules of the room `drinks` whose figures a person can open; the sentence of each is `rule.<id>` in the words. */
export const drinksRules = [
  'drinks.cooling', 'ice.mass', 'drinks.ice', 'drinks.tubs', 'drinks.coolingTested', 'newton.sizeScaling', 'boil.rate', 'tea.waterForServed', 'drinks.noHeat', 'water.heatTime', 'drinks.brewed', 'drinks.served', 'drinks.rounds',
] as const;
