import { binomial } from '../chance/counts';
import { countQuantile } from '../chance/quantile';
import { minutesSpent } from '../stay';
import { listIn, numberIn, type RuleInputs, type RuleOutputs } from './types';

/**
 * Mean of min(stay, u) for the stays a check may name: `exp` (mean), `det` (length), `uni` ([shortest, longest]),
 * `tri` ([shortest, usual, longest]). Source: checks `presence.expected` and `presence.binomial`; Eick, Massey and Whitt 1993.
 */
function spent(inputs: RuleInputs, kind: unknown, parameter: string): (u: number) => number {
  if (kind === 'exp') {
    const mean = numberIn(inputs, parameter);
    return (u) => (u <= 0 ? 0 : mean * -Math.expm1(-u / mean));
  }
  if (kind === 'det') {
    const length = numberIn(inputs, parameter);
    return (u) => Math.min(length, Math.max(0, u));
  }
  const [p = 0, m = p, q = m] = listIn(inputs, parameter);
  if (kind === 'uni') {
    return (u) => (u <= p ? Math.max(0, u) : u >= m ? (p + m) / 2 : p + ((m - p) ** 2 - (m - u) ** 2) / (2 * (m - p)));
  }
  if (kind === 'tri') return (u) => minutesSpent({ shortest: p, usual: m, longest: q }, u);
  throw new RangeError('stay must be exp, det, uni or tri');
}

const share = (k: (u: number) => number, from: number, to: number, t: number): number => (k(t - from) - k(t - to)) / (to - from);

/** People expected at each of `times`: one wave, arrivals even over a window. */
export function presenceExpected(inputs: RuleInputs): RuleOutputs {
  const k = spent(inputs, inputs['stay'], 'stayParam');
  const [from, to, size] = [numberIn(inputs, 'windowFrom'), numberIn(inputs, 'windowTo'), numberIn(inputs, 'waveSize')];
  return { values: listIn(inputs, 'times').map((t) => size * share(k, from, to, t)) };
}

/** People of an invited list who are there at t: binomial with chance p times the chance to be there. */
export function presenceBinomial(inputs: RuleInputs): RuleOutputs {
  const [from = 0, to = 0] = listIn(inputs, 'window');
  const [n, p] = [numberIn(inputs, 'n'), numberIn(inputs, 'p')];
  const pi = share(spent(inputs, inputs['stay'], 'meanStay'), from, to, numberIn(inputs, 't'));
  const chance = binomial(n, p * pi);
  return { pi, mean: n * p * pi, percentiles: listIn(inputs, 'levels').map((level) => countQuantile(chance, level, n)) };
}
