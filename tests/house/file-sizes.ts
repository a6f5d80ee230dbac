/** A file and its number of lines. */
export interface CountedFile {
  readonly path: string;
  readonly lines: number;
}

const limitOf = (path: string): number => (path.startsWith('src-renderer/') ? 400 : 300);

/** Files longer than their part of the house allows. */
export const tooLong = (files: readonly CountedFile[]): (CountedFile & { readonly limit: number })[] =>
  files.map((file) => ({ ...file, limit: limitOf(file.path) })).filter((file) => file.lines > file.limit);

/** The middle value; the lower one of two. */
export const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[Math.floor((values.length - 1) / 2)] ?? 0;
