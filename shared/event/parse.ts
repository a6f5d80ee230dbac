import { catalogue, type Message } from '../words';
import { checkFigures, figureNotes } from './check-figures';
import { checkReferences, checkUnique } from './check-references';
import { checkSense } from './check-sense';
import { clean } from './clean';
import { problemsOf } from './issue-message';
import { placeIn, syntaxErrorAt, tooDeepAt } from './json-scan';
import { currentVersion, migrate, migrations, versionOf, type Migration, type RawEvent } from './migrate';
import { pathText, type EventProblem } from './problem';
import { eventFormat, eventSchema, type Event } from './schema/event';
import { quoted, whereOf } from './where';

/** Longest event file, in letters. The largest event of the tests has a fiftieth of it. */
export const longestFile = 8_000_000;
/** Deepest nesting of brackets; the schema itself needs nine. */
export const deepestNesting = 64;
/** Problems told one by one; the rest is counted. */
const mostProblems = 40;

/** An event read from text, or what keeps it from being read. */
export type ParsedEvent =
  /** `readOnly`: written by a newer version; saving would lose what this version does not know. `notes`: what the cook is told on opening. */
  | { readonly ok: true; readonly event: Event; readonly readOnly: boolean; readonly notes: readonly Message[] }
  | { readonly ok: false; readonly problems: readonly EventProblem[] };

const failed = (...messages: Message[]): ParsedEvent => ({ ok: false, problems: messages.map((message) => ({ path: '', message })) });

/** The first forty problems and, when there are more, a count of the rest. */
export function few(problems: readonly EventProblem[]): EventProblem[] {
  const rest = problems.length - mostProblems;
  return rest <= 0 ? [...problems] : [...problems.slice(0, mostProblems), { path: '', message: { id: 'event.more', params: { count: rest } } }];
}

const isRaw = (value: unknown): value is RawEvent => typeof value === 'object' && value !== null && !Array.isArray(value);

/** What does not fit in an event whose fields are each in order: names used twice, references to nothing, ends before starts, figures out of reach. Empty when all is well. */
export const checkEvent = (event: Event): EventProblem[] => [...checkUnique(event), ...checkReferences(event), ...checkSense(event), ...checkFigures(event)];

/** Reads a value that is already JSON: current fields checked, defaults filled in, unknown fields kept. */
export function readEvent(raw: unknown): { readonly ok: true; readonly event: Event } | { readonly ok: false; readonly problems: readonly EventProblem[] } {
  const read = eventSchema.safeParse(raw);
  if (!read.success) return { ok: false, problems: few(problemsOf(read.error.issues, raw)) };
  const problems = checkEvent(read.data);
  return problems.length === 0 ? { ok: true, event: read.data } : { ok: false, problems: few(problems) };
}

/** JSON text as a value, or the sentence for the place where it breaks. For any of the product's files: length, depth and syntax are checked. */
export function readJson(text: string): { readonly ok: true; readonly value: unknown } | { readonly ok: false; readonly message: Message } {
  if (text.trim() === '') return { ok: false, message: { id: 'event.empty' } };
  if (text.length > longestFile) return { ok: false, message: { id: 'event.tooLong', params: { most: longestFile } } };
  const deep = tooDeepAt(text, deepestNesting);
  if (deep !== null) return { ok: false, message: { id: 'event.tooDeep', params: { most: deepestNesting, line: placeIn(text, deep).line } } };
  try {
    const value: unknown = JSON.parse(text);
    return { ok: true, value };
  } catch {
    const at = syntaxErrorAt(text);
    const near = text.slice(at, at + 12).split(/[\r\n]/)[0] ?? '';
    return { ok: false, message: { id: 'event.syntax', params: { ...placeIn(text, at), near } } };
  }
}

/**
 * Reads an event file. Never throws: whatever the text is, the answer is an event or sentences for the cook.
 * Unknown fields are kept at every level. An older format is brought up to date; a newer one opens read-only where the rest can be read.
 * @param steps migrations to use; tests pass their own.
 */
export function parseEvent(text: string, steps: readonly Migration[] = migrations): ParsedEvent {
  const json = readJson(text.replace(/^\uFEFF/, ''));
  if (!json.ok) return failed(json.message);
  const { value, dropped, tooLarge } = clean(json.value);
  const format = isRaw(value) ? value['format'] : undefined;
  const version = versionOf(format);
  if (!isRaw(value) || version === null) return failed({ id: 'event.notAnEvent', params: { got: quoted(isRaw(value) ? format : value) } });
  if (tooLarge.length > 0) {
    return { ok: false, problems: few(tooLarge.map((path) => ({ path: pathText(path), message: { id: 'event.tooLarge', params: { where: whereOf(value, path), got: catalogue['event.got.number'], most: Number.MAX_SAFE_INTEGER } } }))) };
  }
  const upgraded = migrate(value, steps);
  if (upgraded === null) return failed({ id: 'event.notAnEvent', params: { got: quoted(format) } });
  const newer = version > currentVersion;
  const read = readEvent(newer ? { ...upgraded, format: eventFormat } : upgraded);
  if (!read.ok) {
    return newer ? { ok: false, problems: [{ path: 'format', message: { id: 'event.newerUnreadable', params: { format: String(format) } } }, ...read.problems] } : read;
  }
  const notes: Message[] = [];
  if (newer) notes.push({ id: 'event.note.newer', params: { format: String(format) } });
  if (version < currentVersion) notes.push({ id: 'event.note.upgraded', params: { from: String(format) } });
  if (dropped > 0) notes.push({ id: 'event.note.dropped', params: { count: dropped } });
  notes.push(...figureNotes(read.event));
  return { ok: true, event: read.event, readOnly: newer, notes };
}
