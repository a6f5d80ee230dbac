/** Rules of how a meal is cooked and put out; the sentence of each is `rule.<id>` in the words. */
export const cookingRules = [
  'cooking.keeps', 'cooking.keepsHeld', 'cooking.bowlStands', 'cooking.partKg', 'cooking.potLitres', 'cooking.usable', 'cooking.goes', 'cooking.servedFor', 'cooking.potWanted', 'cooking.noPot', 'cooking.count', 'cooking.stood', 'cooking.potTime', 'cooking.potThere',
] as const;
