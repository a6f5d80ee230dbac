import { negativeBinomial } from '../chance/counts';
import { betaQuantile, countQuantile, gammaQuantile } from '../chance/quantile';
import { listIn, numberIn, type RuleInputs, type RuleOutputs } from './types';

/** A share known as Beta(a, b). */
export function updateBeta(inputs: RuleInputs): RuleOutputs {
  const [a, b] = [numberIn(inputs, 'a'), numberIn(inputs, 'b')];
  return {
    mean: a / (a + b), sd: Math.sqrt((a * b) / ((a + b) ** 2 * (a + b + 1))),
    quantiles: listIn(inputs, 'levels').map((level) => betaQuantile(a, b, level)),
  };
}

/** A rate known as Gamma(shape, rate) after counts of unit intervals have been seen. */
export function updateGammaPoisson(inputs: RuleInputs): RuleOutputs {
  const counts = listIn(inputs, 'counts');
  const shape = numberIn(inputs, 'shape') + counts.reduce((a, b) => a + b, 0);
  const rate = numberIn(inputs, 'rate') + counts.length;
  return {
    shape, rate, mean: shape / rate, sd: Math.sqrt(shape) / rate,
    interval: [gammaQuantile(shape, rate, 0.025), gammaQuantile(shape, rate, 0.975)],
  };
}

/** Open door: total people known as Gamma(a, b), a share F of arrivals due by now, `seen` have come. */
export function updateOpenHouse(inputs: RuleInputs): RuleOutputs {
  const [a, b, due, seen] = [numberIn(inputs, 'a'), numberIn(inputs, 'b'), numberIn(inputs, 'F'), numberIn(inputs, 'seen')];
  const [size, p] = [a + seen, (b + due) / (b + 1)];
  const remainingMean = (size * (1 - p)) / p;
  const chance = negativeBinomial(size, p);
  const most = Math.ceil(remainingMean * 20 + 200);
  return {
    posteriorMeanTheta: size / (b + due), remainingMean, remainingSd: Math.sqrt(size * (1 - p)) / p,
    remaining: listIn(inputs, 'levels').map((level) => countQuantile(chance, level, most)),
  };
}

const gridPoints = 2000;

/** n invited, share who come known as Beta(a, b), each comer here by now with chance F, `seen` are: posterior on a grid of 2,000 points. */
export function updateInvitedList(inputs: RuleInputs): RuleOutputs {
  const [n, a, b] = [numberIn(inputs, 'n'), numberIn(inputs, 'a'), numberIn(inputs, 'b')];
  const [due, seen] = [numberIn(inputs, 'F'), numberIn(inputs, 'seen')];
  const points = Array.from({ length: gridPoints }, (_, i) => (i + 0.5) / gridPoints);
  const logs = points.map((x) => (a - 1) * Math.log(x) + (b - 1) * Math.log1p(-x) + seen * Math.log(x * due) + (n - seen) * Math.log1p(-x * due));
  const top = Math.max(...logs);
  let [weight, theta, remaining] = [0, 0, 0];
  points.forEach((x, i) => {
    const w = Math.exp((logs[i] ?? 0) - top);
    weight += w;
    theta += w * x;
    remaining += (w * (n - seen) * x * (1 - due)) / (1 - x * due);
  });
  return { thetaMean: theta / weight, expectedRemaining: remaining / weight };
}
