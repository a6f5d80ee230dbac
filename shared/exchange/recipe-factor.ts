import { Big } from 'big.js';
import { convert, dimensionOf, parseAmount, plain } from '../measure';
import type { Message } from '../words';
import type { LineAmount } from './line/types';
import type { ImportedYield } from './recipe-types';
import { readYield } from './recipe-yield';

/** The size wanted of a recipe, as typed: one of number of portions, amount in all, factor. */
export type WantedSize = { readonly portions: string } | { readonly yield: string } | { readonly factor: string };
/** The factor that gives the size wanted, or why there is none. `notes`: what had to be settled on the way. */
export type FoundFactor = { readonly factor: Big; readonly notes: readonly Message[] } | { readonly problem: Message };

/** Largest factor; a recipe of four becomes one for a town. */
const mostTimes = 100_000;

const problem = (message: Message): FoundFactor => ({ problem: message });
const toText = (yielded: ImportedYield): string => yielded.texts.join(', ').slice(0, 80);

function positive(text: string): Big | null {
  const value = parseAmount(text);
  return value === null || value.lte(0) || value.gt('1e9') ? null : value;
}

function within(factor: Big, notes: readonly Message[] = []): FoundFactor {
  return factor.gt(mostTimes) || factor.lt('0.0001') ? problem({ id: 'recipe.scale.far', params: { times: plain(factor.round(4)) } }) : { factor, notes };
}

/** The lower end counts: more than enough rather than too little. */
const lowOf = (amount: LineAmount, texts: string): { readonly value: Big; readonly notes: readonly Message[] } => ({
  value: amount.low, notes: amount.high === undefined ? [] : [{ id: 'recipe.scale.range', params: { low: plain(amount.low), got: texts } }],
});

function byPortions(wanted: Big, made: ImportedYield): FoundFactor {
  if (made.portions !== undefined) {
    const { value, notes } = lowOf(made.portions, toText(made));
    return within(wanted.div(value), notes);
  }
  if (made.made?.unit !== 'piece') return problem({ id: 'recipe.scale.noPortions', params: { got: toText(made) } });
  const { value, notes } = lowOf(made.made.amount, toText(made));
  return within(wanted.div(value), [...notes, { id: 'recipe.scale.pieces', params: { got: toText(made) } }]);
}

function byYield(text: string, made: ImportedYield): FoundFactor {
  const wanted = readYield(text);
  if (wanted.made === undefined) return wanted.portions === undefined ? problem({ id: 'recipe.scale.yield', params: { given: text } }) : byPortions(wanted.portions.low, made);
  const { amount, unit } = wanted.made;
  if (made.made === undefined || dimensionOf(made.made.unit) !== dimensionOf(unit) || (dimensionOf(unit) === 'count' && made.made.unit !== unit)) {
    return problem({ id: 'recipe.scale.otherYield', params: { given: text, got: toText(made) || (made.made === undefined ? '' : `${plain(made.made.amount.low)} ${made.made.unit}`) } });
  }
  const { value, notes } = lowOf(made.made.amount, toText(made));
  return within(convert({ amount: amount.low, unit }, made.made.unit).amount.div(value), notes);
}

/** How many times its size a recipe has to be for the size wanted. */
export function factorFor(wanted: WantedSize, made: ImportedYield): FoundFactor {
  if ('yield' in wanted) return byYield(wanted.yield, made);
  const given = 'portions' in wanted ? wanted.portions : wanted.factor;
  const value = positive(given);
  if (value === null) return problem({ id: 'recipe.scale.number', params: { given } });
  return 'portions' in wanted ? byPortions(value, made) : within(value);
}
