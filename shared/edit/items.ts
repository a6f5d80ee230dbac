import type { Event } from '../event';
import type { Message } from '../words';
import { checkPart, patched, settled } from './check';
import type { ListOf } from './lists';
import type { EditResult, Patch } from './types';

interface HasId { readonly id: string }

/** The answer when an item is not in its list. */
export const gone = <T extends HasId>(list: ListOf<T>, id: string): EditResult => ({ problem: { id: 'edit.gone', params: { id } }, path: list.path.join('.') });

/** Adds an item at the end of its list. Fields left out take their defaults. */
export function addItem<T extends HasId>(event: Event, list: ListOf<T>, item: unknown): EditResult {
  const had = list.get(event);
  if (had.length >= list.most) return { problem: { id: 'edit.full', params: { thing: list.thing, most: list.most } }, path: list.path.join('.') };
  const checked = checkPart(list.schema, item, [...list.path, had.length]);
  if (!checked.ok) return checked.problem;
  return settled(list.put(event, [...had, checked.value]), { id: 'edit.add', params: { thing: list.thing, name: list.nameOf(checked.value, event) } });
}

/** Changes fields of an item. The id stays: other parts of the event hold to it. */
export function changeItem<T extends HasId>(event: Event, list: ListOf<T>, id: string, patch: Patch<T>, name?: (before: T, after: T) => Message): EditResult {
  const had = list.get(event);
  const at = had.findIndex((item) => item.id === id);
  const before = had[at];
  if (before === undefined) return gone(list, id);
  const checked = checkPart(list.schema, { ...patched(before, patch), id }, [...list.path, at]);
  if (!checked.ok) return checked.problem;
  const fields = Object.keys(patch);
  const plainName: Message = { id: 'edit.change', params: { thing: list.thing, name: list.nameOf(before, event), field: fields.length === 1 ? (fields[0] ?? null) : null } };
  const after = list.put(event, had.with(at, checked.value));
  if (name !== undefined) return settled(after, name(before, checked.value));
  return settled(after, plainName);
}

/**
 * Takes an item out of its list.
 * @param inUseBy names of the things that cannot do without it; when there are any, it stays.
 * @param loosen takes the item's name out of the parts that can do without it.
 */
export function removeItem<T extends HasId>(event: Event, list: ListOf<T>, id: string, inUseBy: readonly string[] = [], loosen: (event: Event) => Event = (e) => e): EditResult {
  const item = list.get(event).find((i) => i.id === id);
  if (item === undefined) return gone(list, id);
  const name = list.nameOf(item, event);
  if (inUseBy.length > 0) return { problem: { id: 'edit.inUse', params: { thing: list.thing, name, by: [...inUseBy] } }, path: list.path.join('.') };
  return settled(loosen(list.put(event, list.get(event).filter((i) => i.id !== id))), { id: 'edit.remove', params: { thing: list.thing, name } });
}
