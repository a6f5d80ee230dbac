import { Big } from 'big.js';
import { dimensionOf, type Amount } from '../measure';

interface Row { readonly under: number; readonly step: string }
// Grams and millilitres a shop counter weighs to (common practice, no source).
const baseRows: readonly Row[] = [{ under: 50, step: '5' }, { under: 250, step: '10' }, { under: 1000, step: '50' }, { under: 10_000, step: '100' }, { under: Number.POSITIVE_INFINITY, step: '500' }];
const ounceRows: readonly Row[] = [{ under: 4, step: '0.25' }, { under: 16, step: '1' }, { under: Number.POSITIVE_INFINITY, step: '4' }];
const poundRows: readonly Row[] = [{ under: 1, step: '0.0625' }, { under: 10, step: '0.25' }, { under: Number.POSITIVE_INFINITY, step: '1' }];

function step(a: Amount): Big {
  const value = a.amount.toNumber();
  const of = (rows: readonly Row[], times: number): Big => new Big(rows.find((r) => value * times < r.under)?.step ?? '1').div(times);
  if (dimensionOf(a.unit) === 'count') return new Big(1);
  if (a.unit === 'kg' || a.unit === 'L') return of(baseRows, 1000);
  if (a.unit === 'g' || a.unit === 'ml') return of(baseRows, 1);
  if (a.unit === 'lb') return of(poundRows, 1);
  if (a.unit === 'oz' || a.unit === 'floz') return of(ounceRows, 1);
  return new Big('0.25');
}

/** An amount bought loose: rounded up to what a shop weighs out or counts. Zero or less stays nothing. */
export function looseAmount(a: Amount): Amount {
  if (a.amount.lte(0)) return { amount: new Big(0), unit: a.unit };
  const by = step(a);
  return { amount: a.amount.div(by).round(0, Big.roundUp).times(by), unit: a.unit };
}
