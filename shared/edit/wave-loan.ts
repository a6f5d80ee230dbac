import { shoppingOf, type Event } from '../event';
import { settled } from './check';
import { inShopping } from './lists';
import type { EditResult } from './types';

/** Waves away a proposal to borrow something, or lets all of them come back (`null`). `name`: what it is called, for undo. */
export function waveLoan(event: Event, idea: { readonly id: string; readonly name: string } | null): EditResult {
  const { noLoans = [] } = shoppingOf(event);
  const next = idea === null ? [] : [...noLoans.filter((id) => id !== idea.id), idea.id];
  return settled(inShopping(event, { noLoans: next }), idea === null ? { id: 'loan.edit.back' } : { id: 'loan.edit.wave', params: { name: idea.name } });
}
