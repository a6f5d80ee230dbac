import { buyingRules } from './register/buying';
import { calibrationRules } from './register/calibration';
import { cookingRules } from './register/cooking';
import { drinksRules } from './register/drinks';
import { fryingRules } from './register/frying';
import { guestsRules } from './register/guests';
import { kitchenRules } from './register/kitchen';
import { menuRules } from './register/menu';
import { prepRules } from './register/prep';
import { recipeRules } from './register/recipe';
import { safetyRules } from './register/safety';
import { timelineRules } from './register/timeline';

/** Ids of every rule whose figures a person can open. A test keeps this list and the words `rule.<id>` equal. */
export const ruleIds = [
  ...guestsRules, ...menuRules, ...recipeRules, ...prepRules, ...buyingRules, ...kitchenRules, ...fryingRules, ...drinksRules, ...cookingRules, ...timelineRules, ...safetyRules, ...calibrationRules,
] as const;
/** Identifier of a rule. */
export type RuleId = (typeof ruleIds)[number];
