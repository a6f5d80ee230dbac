/** A place in a text, counted from 1. */
export interface TextPlace {
  readonly line: number;
  readonly column: number;
}

/** Line and column of an offset. */
export function placeIn(text: string, offset: number): TextPlace {
  const before = text.slice(0, offset).split(/\r\n|\n|\r/);
  return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
}

/**
 * Offset where brackets first stand more than `most` deep inside each other; null when they never do.
 * Looked at before the text is read, so that no later step can run out of stack.
 */
export function tooDeepAt(text: string, most: number): number | null {
  let depth = 0;
  let inText = false;
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (inText) {
      if (c === 92) i++; // a backslash hides the next sign
      else if (c === 34) inText = false;
    } else if (c === 34) inText = true;
    else if (c === 91 || c === 123) {
      if (++depth > most) return i;
    } else if (c === 93 || c === 125) depth--;
  }
  return null;
}

const white = /[ \t\r\n]*/y;
const plainToken = /(?:-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null)(?![\w.])/y;

/** Offset after a quoted text that starts at `at`, or null when it is not closed on its line or holds what JSON does not allow. A loop: texts may be millions of letters long. */
function textEnd(text: string, at: number): number | null {
  if (text[at] !== '"') return null;
  for (let i = at + 1; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c === 34) return i + 1;
    if (c < 32) return null;
    if (c === 92) {
      const escape = /^(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/.exec(text.slice(i + 1, i + 6));
      if (escape === null) return null;
      i += escape[0].length;
    }
  }
  return null;
}

/**
 * Offset of the first sign that JSON does not allow, or the text's length when it ends too early. Only called for text that could not be
 * read: engines word their own messages differently and some give no place at all.
 */
export function syntaxErrorAt(text: string): number {
  let at = 0;
  const skip = (token: RegExp): boolean => {
    token.lastIndex = at;
    const match = token.exec(text);
    if (match === null) return false;
    at = token.lastIndex;
    return true;
  };
  const quotedText = (): boolean => {
    const end = textEnd(text, at);
    at = end ?? at;
    return end !== null;
  };
  const sign = (c: string): boolean => {
    skip(white);
    if (text[at] !== c) return false;
    at++;
    return true;
  };
  /** Reads one value; false where it breaks off, with `at` on the wrong sign. */
  const value = (): boolean => {
    skip(white);
    if (sign('{')) return sign('}') || items('}', () => skip(white) && quotedText() && sign(':') && value());
    if (sign('[')) return sign(']') || items(']', value);
    return quotedText() || skip(plainToken);
  };
  const items = (close: string, item: () => boolean): boolean => {
    for (;;) {
      if (!item()) return false;
      if (sign(close)) return true;
      if (!sign(',')) return false;
    }
  };
  if (value()) skip(white);
  return at;
}
