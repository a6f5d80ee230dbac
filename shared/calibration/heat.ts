import { batterHeat, crustHeat, waterLostAt } from '../frying';
import { divide, exponential, figure, minus, plus, times, worked, type Figure, type Term } from '../figure';
import { settle, settledTerm } from '../household';
import { boilingPoint } from '../kitchen';
import type { TrialSubject } from './subject';

/** What the pieces asked of the oil: all heat, how fast it starts, and the time it dies away with. kJ, kW, s. */
export interface Asked {
  readonly loadKg: Figure;
  /** Into all pieces until they are lifted, kJ. */
  readonly heat: Figure;
  /** When the pieces go in, kW. */
  readonly peak: Figure;
  readonly tau: Term;
  readonly fryMinutes: Figure | Term;
}

/** A figure or an input as a term of another figure. */
export const termOf = (key: string, word: string, from: Figure | Term): Term => ('key' in from ? { ...from, key } : worked(key, { word }, from));

/**
 * Heat into the batch, kJ, and its first rush, kW: the demand dies away as exp(−t/τ) until the pieces are lifted (rule `fry.dip`). Weight, fry
 * time and water lost as measured, else as the recipe has them. Rules `trial.load`, `trial.heat`, `trial.peak`.
 */
export function askedOf(s: TrialSubject, piece: Figure | null, minutes: Figure | null, lost: Figure | null): Asked {
  const { event, frying, trial } = s;
  const set = (id: string) => settle(event, id);
  const boil = boilingPoint(event);
  const [cw, cs, latent, tau] = [set('water.cp'), set('fry.cs'), set('fry.hfg'), set('fry.tau')];
  const pieces = s.measured('pieces', 'trial.term.pieces', trial.pieces, 'pieces', 'pieces');
  const grams = piece ?? s.ofRecipe('grams', 'frying.term.pieceGrams', frying.pieceBatterG, 'g');
  const loadKg = figure((trial.pieces * Number(grams.value)) / 1000, 'kg', () => ({ rule: 'trial.load', terms: [pieces, termOf('grams', 'frying.term.pieceGrams', grams)], sum: divide(times('pieces', 'grams'), 1000) }));
  const water = lost ?? waterLostAt(event, frying, s.ofRecipe);
  const crust = crustHeat(event, frying, s.ofRecipe);
  const perKg = batterHeat({ water: frying.waterFraction, lost: water.value, from: frying.batterC, to: boil.value, waterCp: cw.value, solidsCp: cs.value, latent: latent.value }) + crust.value;
  const rise = minus('boil', 'batter');
  const heat = figure(loadKg.value * perKg, 'kJ', () => ({
    rule: 'trial.heat',
    terms: [worked('load', { word: 'trial.term.load' }, loadKg), s.ofRecipe('water', 'frying.term.water', frying.waterFraction, ''), worked('lost', { word: 'frying.term.waterLost' }, water), worked('crust', { word: 'frying.term.crust' }, crust),
      s.ofRecipe('batter', 'frying.term.batterC', frying.batterC, 'degC'), worked('boil', { word: 'kitchen.term.boilingPoint' }, boil), settledTerm('cw', cw), settledTerm('cs', cs), settledTerm('latent', latent)],
    sum: times('load', plus(times('water', 'cw', rise), times(minus(1, 'water'), 'cs', rise), times('lost', 'latent'), 'crust')),
  }));
  const fryMinutes = minutes ?? s.ofRecipe('fry', 'frying.term.fryMinutes', frying.fryMinutes, 'min');
  const fade = (60 * Number(fryMinutes.value)) / tau.value;
  const peak = figure(heat.value / (tau.value * (1 - Math.exp(-fade))), 'kW', () => ({
    rule: 'trial.peak', terms: [worked('heat', { word: 'trial.term.heat' }, heat), settledTerm('tau', tau), termOf('fry', 'frying.term.fryMinutes', fryMinutes)],
    sum: divide('heat', times('tau', minus(1, exponential(times(-1, divide(times(60, 'fry'), 'tau')))))),
  }));
  return { loadKg, heat, peak, tau: settledTerm('tau', tau), fryMinutes };
}
