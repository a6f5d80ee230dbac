import { checkEvent, clean, few, newEvent, pathText, problemsOf, quoted, readJson, type EventProblem } from '../event';
import { catalogue, type Message } from '../words';
import { shelfFormat, shelfSchema, type Shelf } from './shelf';

/** A shelf read from text, or what keeps it from being read. `notes`: what the cook is told on opening. */
export type ParsedShelf =
  | { readonly ok: true; readonly shelf: Shelf; readonly notes: readonly Message[] }
  | { readonly ok: false; readonly problems: readonly EventProblem[] };

const currentVersion = Number(/\d+$/.exec(shelfFormat)?.[0]);
const failed = (...messages: Message[]): ParsedShelf => ({ ok: false, problems: messages.map((message) => ({ path: '', message })) });

/** An event that holds nothing, whose checks of recipes serve the shelf as well: the way to a recipe is the same in both. */
const blank = newEvent({ id: 'shelf', title: 'Shelf', day: '2000-01-01' });

/** What does not fit in a shelf whose fields are each in order: short names used twice, steps that wait for nothing known or for each other. */
export const checkShelf = (shelf: Shelf): EventProblem[] => checkEvent({ ...blank, recipes: shelf.recipes });

function formatOf(value: unknown): unknown {
  return typeof value === 'object' && value !== null && 'format' in value ? value.format : undefined;
}

/** Problem with the format name, or null when this version can read it. */
function formatProblem(value: unknown): Message | null {
  const format = formatOf(value);
  const match = typeof format === 'string' ? /^brimful-shelf\/(\d{1,4})$/.exec(format) : null;
  if (match === null || typeof format !== 'string') return { id: 'shelf.notAShelf', params: { got: quoted(format ?? value) } };
  return Number(match[1]) > currentVersion ? { id: 'shelf.newer', params: { format } } : null;
}

/**
 * Reads a shelf file. Never throws: whatever the text is, the answer is a shelf or sentences for the cook.
 * Unknown fields are kept at every level; a shelf of a newer format is not opened, since saving would lose part of it.
 */
export function parseShelf(text: string): ParsedShelf {
  const json = readJson(text.replace(/^\uFEFF/, ''));
  if (!json.ok) return failed(json.message.id === 'event.empty' ? { id: 'shelf.empty' } : json.message);
  const { value, dropped, tooLarge } = clean(json.value);
  const wrong = formatProblem(value);
  if (wrong !== null) return failed(wrong);
  if (tooLarge.length > 0) {
    return { ok: false, problems: few(tooLarge.map((path) => ({ path: pathText(path), message: { id: 'event.tooLarge', params: { where: [], got: catalogue['event.got.number'], most: Number.MAX_SAFE_INTEGER } } }))) };
  }
  const read = shelfSchema.safeParse(value);
  if (!read.success) return { ok: false, problems: few(problemsOf(read.error.issues, value)) };
  const problems = checkShelf(read.data);
  if (problems.length > 0) return { ok: false, problems: few(problems) };
  return { ok: true, shelf: read.data, notes: dropped === 0 ? [] : [{ id: 'shelf.note.dropped', params: { count: dropped } }] };
}
