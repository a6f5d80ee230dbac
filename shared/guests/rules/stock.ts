import { poisson } from '../chance/counts';
import { countQuantile, normalDensity, normalLoss, normalQuantile } from '../chance/quantile';
import { numberIn, type RuleInputs, type RuleOutputs } from './types';

/** Share of days on which there should be enough, from what a portion short and a portion left over cost (the newsvendor ratio). */
const ratioIn = (inputs: RuleInputs): number => numberIn(inputs, 'cu') / (numberIn(inputs, 'cu') + numberIn(inputs, 'co'));

/** How much to prepare for a normal demand; shortage and mismatch cost expected then. */
export function newsvendorNormal(inputs: RuleInputs): RuleOutputs {
  const [mu, sigma, ratio] = [numberIn(inputs, 'mu'), numberIn(inputs, 'sigma'), ratioIn(inputs)];
  const z = normalQuantile(ratio);
  return {
    ratio, z, Q: mu + z * sigma, expectedShortage: sigma * normalLoss(z),
    minCost: (numberIn(inputs, 'cu') + numberIn(inputs, 'co')) * sigma * normalDensity(z),
  };
}

/** How much to prepare for a Poisson demand. */
export function newsvendorPoisson(inputs: RuleInputs): RuleOutputs {
  const [mean, cu, co] = [numberIn(inputs, 'lam'), numberIn(inputs, 'cu'), numberIn(inputs, 'co')];
  const chance = poisson(mean);
  const most = Math.ceil(mean + 40 * Math.sqrt(mean) + 40);
  const Q = countQuantile(chance, ratioIn(inputs), most);
  let cdf = 0;
  let expectedCost = 0;
  for (let k = 0; k <= most; k += 1) {
    if (k <= Q) cdf += chance(k);
    expectedCost += chance(k) * (k > Q ? cu * (k - Q) : co * (Q - k));
  }
  return { Q, cdf, expectedCost };
}

/** How much to prepare for a demand even between low and high. */
export function newsvendorUniform(inputs: RuleInputs): RuleOutputs {
  const low = numberIn(inputs, 'low');
  return { Q: low + (numberIn(inputs, 'high') - low) * ratioIn(inputs) };
}

/** Level of no shortage at all against the share of portions served. */
export function fillRate(inputs: RuleInputs): RuleOutputs {
  const [mu, sigma] = [numberIn(inputs, 'mu'), numberIn(inputs, 'sigma')];
  const z = normalQuantile(numberIn(inputs, 'level'));
  return { Q: mu + z * sigma, fillRate: 1 - (sigma * normalLoss(z)) / mu };
}

/** k equal demands kept apart or pooled, with pairwise correlation rho. */
export function pooling(inputs: RuleInputs): RuleOutputs {
  const [k, mu, sigma, rho] = [numberIn(inputs, 'k'), numberIn(inputs, 'mu'), numberIn(inputs, 'sigma'), numberIn(inputs, 'rho')];
  const z = normalQuantile(numberIn(inputs, 'level'));
  return { separate: k * (mu + z * sigma), pooled: k * mu + z * sigma * Math.sqrt(k * (1 + (k - 1) * rho)) };
}

/** Value of deciding on wet batter only after the crowd is known, dry mix measured for the larger crowd. */
export function staged(inputs: RuleInputs): RuleOutputs {
  const [high, low, chance] = [numberIn(inputs, 'high'), numberIn(inputs, 'low'), numberIn(inputs, 'probHigh')];
  const apart = high - low;
  const singleStage = Math.min((1 - chance) * apart * numberIn(inputs, 'costUnusedWet'), chance * apart * numberIn(inputs, 'costShort'));
  const later = Math.min((1 - chance) * apart * numberIn(inputs, 'costUnusedDry'), chance * apart * numberIn(inputs, 'costShort'));
  return { singleStage, staged: later, optionValue: singleStage - later };
}
