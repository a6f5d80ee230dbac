import { presenceBinomial, presenceExpected } from './presence';
import { fillRate, newsvendorNormal, newsvendorPoisson, newsvendorUniform, pooling, staged } from './stock';
import { turnoutBetaBinomial, turnoutBinomial, turnoutFamilies, turnoutThreePoint } from './turnout';
import type { RuleInputs, RuleOutputs } from './types';
import { updateBeta, updateGammaPoisson, updateInvitedList, updateOpenHouse } from './update';

/** Named rules of this room, by id, as check files call them. @throws RangeError when an input is missing. */
export const guestsRulesTable: Readonly<Record<string, (inputs: RuleInputs) => RuleOutputs>> = {
  'presence.expected': presenceExpected,
  'presence.binomial': presenceBinomial,
  'turnout.binomial': turnoutBinomial,
  'turnout.betaBinomial': turnoutBetaBinomial,
  'turnout.families': turnoutFamilies,
  'turnout.threePoint': turnoutThreePoint,
  'stock.newsvendorNormal': newsvendorNormal,
  'stock.newsvendorPoisson': newsvendorPoisson,
  'stock.newsvendorUniform': newsvendorUniform,
  'stock.fillRate': fillRate,
  'stock.pooling': pooling,
  'stock.staged': staged,
  'update.beta': updateBeta,
  'update.gammaPoisson': updateGammaPoisson,
  'update.openHouse': updateOpenHouse,
  'update.invitedList': updateInvitedList,
};
