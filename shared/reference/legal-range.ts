import { bandFactors } from './appetite';
import { parameters, type Parameter } from './parameters';
import { rolePortions } from './roles';

/** Values a household's own figure may have: beyond them it is a slip of the pen, and some would stop the arithmetic. */
export interface LegalRange {
  readonly label: string;
  readonly unit: string;
  readonly least: number;
  readonly most: number;
  /** Value of the table; null where the key has no row of its own. */
  readonly usual: number | null;
}

/** How far beyond the known range a household may go (common practice, no source): a factor, and degrees for temperatures. */
const factor = 4;
const degrees = 15;
/** Constants have no range of their own: a fifth either way is already another substance. */
const constantShare = 0.2;

const isTemperature = (p: Parameter): boolean => p.unit === 'C' || p.unit === 'degC';
const isShare = (p: Parameter, high: number): boolean => (p.unit === '-' || p.unit === 'share' || p.unit === 'share of fill') && high <= 1;

/** The known range four times as wide both ways, shares never above 1, zero where the known range has it. */
function wideOf(p: Parameter): Pick<LegalRange, 'least' | 'most'> {
  const { low, high, value } = p;
  if (low === null || high === null) return { least: value - Math.abs(value) * constantShare, most: value + Math.abs(value) * constantShare };
  if (isTemperature(p)) return { least: low - degrees, most: high + degrees };
  return { least: low / factor, most: isShare(p, high) ? 1 : high * factor };
}

/** The row's own `min` and `max` where it has them, else as wide as `wideOf` says. */
function rangeOf(p: Parameter): LegalRange {
  const wide = wideOf(p);
  return { label: p.label, unit: p.unit === '-' ? '' : p.unit, least: p.min ?? wide.least, most: p.max ?? wide.most, usual: p.value };
}

/** Most of one dish that anybody eats or drinks at one event: pieces, or grams and millilitres (common practice, no source). */
export const mostPerPerson = { pieces: 100, gramsOrMl: 5000 } as const;

const bandKinds = ['food', 'cold', 'hot', 'hotCaffeinated'];

function ranges(): ReadonlyMap<string, LegalRange> {
  const all = new Map(parameters.map((p) => [p.id, rangeOf(p)]));
  for (const { band } of bandFactors) {
    for (const kind of bandKinds) all.set(`band.${band}.${kind}`, { label: `band.${band}.${kind}`, unit: '', least: 0, most: 5, usual: null });
  }
  for (const { role, servedAs } of rolePortions) {
    const inPieces = servedAs === 'piece';
    all.set(`portion.${role}`, { label: `portion.${role}`, unit: '', least: 0, most: inPieces ? mostPerPerson.pieces : mostPerPerson.gramsOrMl, usual: null });
  }
  return all;
}

const byKey = ranges();

/**
 * Range of a house figure by its key: a parameter's id, `portion.<role>` (in pieces, grams or millilitres), `band.<band>.<food|cold|hot|hotCaffeinated>` or
 * `appetite.<number of dishes>`; null for a key that nothing reads.
 */
export function legalRange(key: string): LegalRange | null {
  const found = byKey.get(key);
  if (found !== undefined) return found;
  return /^appetite\.[1-9]\d?$/.test(key) ? { label: key, unit: '', least: 0, most: 1, usual: null } : null;
}
