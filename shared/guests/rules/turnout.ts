import { betaBinomial, binomial, poisson } from '../chance/counts';
import { betaQuantile, countQuantile } from '../chance/quantile';
import { pertMean, pertSd } from '../turnout';
import { listIn, numberIn, tableIn, type RuleInputs, type RuleOutputs } from './types';

/** n invited who each come with chance p, and the same mean with an open door. */
export function turnoutBinomial(inputs: RuleInputs): RuleOutputs {
  const [n, p, levels] = [numberIn(inputs, 'n'), numberIn(inputs, 'p'), listIn(inputs, 'levels')];
  const mean = n * p;
  return {
    mean, binomialSd: Math.sqrt(n * p * (1 - p)),
    binomial: levels.map((level) => countQuantile(binomial(n, p), level, n)),
    poisson: levels.map((level) => countQuantile(poisson(mean), level, Math.ceil(mean + 40 * Math.sqrt(mean) + 40))),
  };
}

/** n invited whose share who come is uncertain, Beta(a, b). */
export function turnoutBetaBinomial(inputs: RuleInputs): RuleOutputs {
  const [n, a, b] = [numberIn(inputs, 'n'), numberIn(inputs, 'a'), numberIn(inputs, 'b')];
  const mu = a / (a + b);
  const chance = betaBinomial(n, a, b);
  return {
    mean: n * mu, sd: Math.sqrt((n * mu * (1 - mu) * (n + a + b)) / (a + b + 1)),
    percentiles: listIn(inputs, 'levels').map((level) => countQuantile(chance, level, n)),
  };
}

/** Families arrive together: mean and variance of people for n invited families, and for a Poisson number of families. */
export function turnoutFamilies(inputs: RuleInputs): RuleOutputs {
  const sizes = tableIn(inputs, 'familySizeProb').map(([size, chance]) => ({ size: Number(size), chance }));
  const first = sizes.reduce((s, x) => s + x.size * x.chance, 0);
  const second = sizes.reduce((s, x) => s + x.size ** 2 * x.chance, 0);
  const [n, p, families] = [numberIn(inputs, 'n'), numberIn(inputs, 'p'), numberIn(inputs, 'lam')];
  return {
    meanBinomial: n * p * first, varBinomial: n * (p * second - p ** 2 * first ** 2),
    meanPoisson: families * first, varPoisson: families * second,
  };
}

function triangularQuantile(low: number, likely: number, high: number, level: number): number {
  const turn = (likely - low) / (high - low);
  return level <= turn ? low + Math.sqrt(level * (high - low) * (likely - low)) : high - Math.sqrt((1 - level) * (high - low) * (high - likely));
}

/** Low, likely, high as a PERT (shape 4) and as a triangular distribution. */
export function turnoutThreePoint(inputs: RuleInputs): RuleOutputs {
  const [low, likely, high] = [numberIn(inputs, 'low'), numberIn(inputs, 'likely'), numberIn(inputs, 'high')];
  const range = high - low;
  const alpha = 1 + (4 * (likely - low)) / range;
  const beta = 1 + (4 * (high - likely)) / range;
  const levels = listIn(inputs, 'levels');
  return {
    pertShape: [alpha, beta], pertMean: pertMean({ low, likely, high }),
    pertSd: pertSd({ low, likely, high }),
    pert: levels.map((level) => low + range * betaQuantile(alpha, beta, level)),
    triMean: (low + likely + high) / 3,
    triSd: Math.sqrt((low ** 2 + likely ** 2 + high ** 2 - low * likely - low * high - likely * high) / 18),
    tri: levels.map((level) => triangularQuantile(low, likely, high, level)),
  };
}
