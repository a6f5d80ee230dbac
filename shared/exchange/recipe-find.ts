import { withoutEntities } from './line/tidy';

/** Deepest nesting of brackets that is looked into. A page's own data stay far below. */
export const deepestRecipe = 64;
/** Beginnings of JSON in a pasted text that are tried. */
const mostTries = 200;
/** Script blocks of a page that are read. */
const mostBlocks = 100;

const openScript = /<(?:!--|script(?=[\s>/]))/gi;
const attribute = /\s*([^\s=>"'/]+)(?:\s*=\s*(?:"([^"]*)"|'([^']*)'|([^\s>"']+)))?|\s*[/"'=]/y;

/** Attributes of a tag whose name ends at `at`; the offset after its closing bracket. */
function attributes(text: string, at: number): { readonly type: string; readonly end: number } {
  let type = '';
  let end = at;
  for (;;) {
    attribute.lastIndex = end;
    const found = attribute.exec(text);
    if (found === null || found[0] === '') break;
    end = attribute.lastIndex;
    if (found[1]?.toLowerCase() === 'type' && type === '') type = found[2] ?? found[3] ?? found[4] ?? '';
  }
  const close = text.indexOf('>', end);
  return { type: type.trim().toLowerCase(), end: close < 0 ? text.length : close + 1 };
}

/** The contents of the `application/ld+json` scripts of an HTML page, in their order. Comments are passed over, as a browser does. */
export function scriptBlocks(html: string): string[] {
  const blocks: string[] = [];
  openScript.lastIndex = 0;
  for (;;) {
    const open = openScript.exec(html);
    if (open === null || blocks.length >= mostBlocks) return blocks;
    if (open[0] === '<!--') {
      const end = html.indexOf('-->', open.index + 4);
      if (end < 0) return blocks;
      openScript.lastIndex = end + 3;
      continue;
    }
    const { type, end } = attributes(html, open.index + open[0].length);
    const close = /<\/script(?=[\s>/])/gi;
    close.lastIndex = end;
    const closing = close.exec(html);
    const to = closing?.index ?? html.length;
    if (/^application\/ld\+json\s*(?:;|$)/.test(type)) blocks.push(html.slice(end, to));
    openScript.lastIndex = to;
  }
}

/** Offset after the bracket that closes the one at `start`; null when it never closes or nests too deep. */
function closingAt(text: string, start: number): number | null {
  let depth = 0;
  let quoted = false;
  for (let i = start; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (quoted) {
      if (c === 92) i++; // a backslash hides the next sign
      else if (c === 34) quoted = false;
    } else if (c === 34) quoted = true;
    else if (c === 91 || c === 123) {
      if (++depth > deepestRecipe) return null;
    } else if ((c === 93 || c === 125) && --depth === 0) return i + 1;
  }
  return null;
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** Line ends inside quoted text, which JSON does not allow and pages often have, become spaces. */
// eslint-disable-next-line no-control-regex -- control signs are what is replaced
const withoutControls = (text: string): string => text.replace(/[\u0000-\u001f]+/g, ' ');

/** A JSON text as a value, also with the faults pages often have: line ends inside texts, HTML entities for the quotation marks, a comma too many. */
function tolerant(text: string): unknown {
  const spaced = withoutControls(text);
  const attempts = [text, spaced, withoutEntities(spaced), spaced.replace(/,\s*(?=[\]}])/g, '')];
  for (const attempt of attempts) {
    const value = parsed(attempt);
    if (value !== undefined) return value;
  }
  return undefined;
}

/** What is found in a text: values of JSON, and how many places looked like JSON but could not be read. */
export interface FoundJson {
  readonly values: readonly unknown[];
  readonly unreadable: number;
}

/** Every JSON object or list that stands in a text, whole or between other words. */
export function jsonIn(text: string): FoundJson {
  const values: unknown[] = [];
  let unreadable = 0;
  let from = 0;
  let endless = 0;
  // What is looked at again and again adds up: hostile texts are given up after a few times their own length.
  let budget = 6 * text.length + 1_000_000;
  for (let tries = 0; tries < mostTries; tries++) {
    const offset = text.slice(from).search(/[{[]/);
    if (offset < 0) break;
    const start = from + offset;
    const end = closingAt(text, start);
    budget -= (end ?? text.length) - start;
    if (end === null) endless++;
    if (budget < 0) break;
    const value = end === null ? undefined : tolerant(text.slice(start, end));
    if (value === undefined && /^[{[]\s*["{[]/.test(text.slice(start, start + 200))) unreadable++;
    if (value !== undefined) values.push(value);
    if (endless > 20) break;
    from = value === undefined || end === null ? start + 1 : end;
  }
  return { values, unreadable };
}

/** JSON in a pasted text or a saved page: from the script blocks where there are some, else from the text itself. */
export function jsonInPage(text: string): FoundJson {
  const blocks = /<script/i.test(text) ? scriptBlocks(text) : [];
  if (blocks.length === 0) return jsonIn(text);
  const found = blocks.map(jsonIn);
  return { values: found.flatMap((one) => one.values), unreadable: found.filter((one) => one.values.length === 0).length };
}
