import { catalogue } from './catalogue';
import type { Formats } from './formats';

type Catalogue = typeof catalogue;
/** Id of a sentence or label. */
export type WordId = keyof Catalogue;
/** Parameters of a sentence; `undefined` for fixed text. */
export type WordParams<K extends WordId> = Catalogue[K] extends (params: infer P, formats: Formats) => string ? P : undefined;
/** Ids of fixed texts. */
export type PlainWordId = { [K in WordId]: Catalogue[K] extends string ? K : never }[WordId];

/**
 * A sentence not yet in words: what the core returns and a face turns into text with `sayMessage`. Fixed texts are one member of the
 * union, not hundreds, which keeps the type small enough for the compiler.
 */
export type Message = { readonly id: PlainWordId } | { [K in Exclude<WordId, PlainWordId>]: { readonly id: K; readonly params: WordParams<K> } }[Exclude<WordId, PlainWordId>];

/** The words of an id. Sentences with parameters need them; fixed text takes none. */
export function say<K extends WordId>(formats: Formats, id: K, ...params: WordParams<K> extends undefined ? [] : [WordParams<K>]): string {
  return render(formats, id, params[0]);
}

/** The words of a message the core returned. */
export const sayMessage = (formats: Formats, message: Message): string =>
  render(formats, message.id, 'params' in message ? message.params : undefined);

/** True when a text is an id of the catalogue. */
export const isWordId = (id: string): id is WordId => Object.hasOwn(catalogue, id);

/** The words of an id known only at run time, such as a term's label. Unknown ids come back as they are, so that a gap is seen and not hidden. */
export const sayLoose = (formats: Formats, id: string, params?: Readonly<Record<string, string | number>>): string =>
  isWordId(id) ? render(formats, id, params) : id;

const isMessage = (value: unknown): value is { readonly id: WordId; readonly params?: unknown } =>
  typeof value === 'object' && value !== null && 'id' in value && typeof value.id === 'string' && isWordId(value.id)
  && Object.keys(value).every((key) => key === 'id' || key === 'params');

const holds = (value: unknown): boolean => isMessage(value) || (Array.isArray(value) && value.some(isMessage));

/** Parameters with the sentences inside them said first, those in a list too. */
function inner(formats: Formats, params: unknown): unknown {
  if (typeof params !== 'object' || params === null || !Object.values(params).some(holds)) return params;
  const said = (value: unknown): unknown => (isMessage(value) ? render(formats, value.id, value.params) : Array.isArray(value) ? value.map(said) : value);
  return Object.fromEntries(Object.entries(params).map(([key, value]): [string, unknown] => [key, said(value)]));
}

function render(formats: Formats, id: WordId, params: unknown): string {
  const entry: unknown = catalogue[id];
  if (typeof entry === 'string') return entry;
  if (typeof entry !== 'function') throw new TypeError(`no words for ${id}`);
  return String(entry(inner(formats, params), formats));
}
