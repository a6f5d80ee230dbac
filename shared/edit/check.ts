import type * as z from 'zod';
import { checkEvent, problemsOf, type Event, type FieldPath } from '../event';
import type { Message } from '../words';
import type { EditResult, Patch } from './types';

/** A part of the event that the schema accepts, or the first thing that does not fit. */
export type CheckedPart<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: EditResult };

/** A document that has nothing but `value` at `path`, so that a sentence about it can name and quote it. */
const documentWith = (path: FieldPath, value: unknown): unknown => path.reduceRight<unknown>((inner, key) => {
  if (typeof key === 'string') return { [key]: inner };
  const list: unknown[] = [];
  list[key] = inner;
  return list;
}, value);

/** Checks a part of the event by its own schema. Only the part that was edited is read again: edits stay fast enough to drag. */
export function checkPart<T>(schema: z.ZodType<T>, value: unknown, path: FieldPath): CheckedPart<T> {
  const read = schema.safeParse(value);
  if (read.success) return { ok: true, value: read.data };
  const [first] = problemsOf(read.error.issues.map((issue) => ({ ...issue, path: [...path, ...issue.path] })), documentWith(path, value));
  return { ok: false, problem: first === undefined ? { problem: { id: 'edit.gone', params: { id: '' } }, path: '' } : { problem: first.message, path: first.path } };
}

/** The edit's answer: the event when all its parts fit together, else the first thing that does not. */
export function settled(event: Event, name: Message): EditResult {
  const [first] = checkEvent(event);
  return first === undefined ? { event, name } : { problem: first.message, path: first.path };
}

/** A value with the fields of a patch; fields patched to `undefined` are taken out. */
export function patched(value: object, patch: Patch<Record<string, unknown>>): Record<string, unknown> {
  return Object.fromEntries(Object.entries({ ...value, ...patch }).filter(([, field]) => field !== undefined));
}
