import type * as z from 'zod';
import type { Message } from '../words';
import { pathText, type EventProblem, type FieldPath } from './problem';
import { quoted, valueAt, whereOf } from './where';

const clockFields = new Set(['from', 'to', 'at', 'opensAt', 'closesAt']);

/** The word for what the schema wanted, by its own name. */
function wrongType(expected: string, where: ReturnType<typeof whereOf>, got: string): Message {
  switch (expected) {
    case 'number': return { id: 'event.needsNumber', params: { where, got } };
    case 'int': return { id: 'event.needsWhole', params: { where, got } };
    case 'string': return { id: 'event.needsText', params: { where, got } };
    case 'boolean': return { id: 'event.needsYesNo', params: { where, got } };
    case 'array': return { id: 'event.needsList', params: { where, got } };
    case 'object': return { id: 'event.needsGroup', params: { where, got } };
    default: return { id: 'event.other', params: { where, got } };
  }
}

function outOfRange(issue: { readonly origin: string; readonly bound: number; readonly low: boolean }, path: FieldPath, where: ReturnType<typeof whereOf>, got: string): Message {
  const { origin, bound, low } = issue;
  if (origin === 'array') return low ? { id: 'event.tooFew', params: { where, least: bound } } : { id: 'event.tooMany', params: { where, most: bound } };
  if (origin === 'string') return low ? { id: 'event.wrongForm', params: { where, got, hint: 'name' } } : { id: 'event.tooLongText', params: { where, most: bound } };
  const key = path.at(-1);
  if (typeof key === 'string' && clockFields.has(key)) return low ? { id: 'event.tooEarly', params: { where, got, least: bound } } : { id: 'event.tooLate', params: { where, got, most: bound } };
  return low ? { id: 'event.tooSmall', params: { where, got, least: bound } } : { id: 'event.tooLarge', params: { where, got, most: bound } };
}

function messageOf(issue: z.core.$ZodIssue, root: unknown, path: FieldPath): Message {
  const where = whereOf(root, path);
  const value = valueAt(root, path);
  const got = quoted(value);
  if (value === undefined && issue.code !== 'custom') return { id: 'event.missing', params: { where } };
  switch (issue.code) {
    case 'invalid_type': return wrongType(issue.expected, where, got);
    case 'too_small': return outOfRange({ origin: issue.origin, bound: Number(issue.minimum), low: true }, path, where, got);
    case 'too_big': return outOfRange({ origin: issue.origin, bound: Number(issue.maximum), low: false }, path, where, got);
    case 'invalid_format': return { id: 'event.wrongForm', params: { where, got, hint: issue.message } };
    case 'invalid_value': return { id: 'event.notOneOf', params: { where, got, allowed: issue.values.map(String) } };
    case 'invalid_union': return { id: 'event.notOneOf', params: { where, got, allowed: allowedKinds(issue) } };
    case 'custom': return issue.message === 'noSuchDay'
      ? { id: 'event.wrongForm', params: { where, got, hint: issue.message } }
      : { id: 'event.wrongOrder', params: { where, hint: issue.message } };
    case 'not_multiple_of': case 'unrecognized_keys': case 'invalid_key': case 'invalid_element': default:
      return { id: 'event.other', params: { where, got } };
  }
}

/** The kinds a choice by `kind` may have. */
function allowedKinds(issue: z.core.$ZodIssueInvalidUnion): string[] {
  return 'options' in issue && Array.isArray(issue.options) ? issue.options.map(String) : [];
}

/**
 * Problems of the cook from the schema's issues.
 * @param root the document the paths start from, as read, so that the sentence can quote it.
 * @param above keys from the event to the part that was checked, when only a part was.
 */
export function problemsOf(issues: readonly z.core.$ZodIssue[], root: unknown, above: FieldPath = []): EventProblem[] {
  const told = new Set<string>();
  return issues.flatMap((issue) => {
    const path = [...above, ...issue.path.map((key) => (typeof key === 'number' ? key : String(key)))];
    const text = pathText(path);
    // One sentence for a field: a day in the wrong form is not also a day that does not exist.
    if (told.has(text)) return [];
    told.add(text);
    return [{ path: text, message: messageOf(issue, root, path) }];
  });
}
