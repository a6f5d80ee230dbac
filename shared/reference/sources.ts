import { parameters } from './parameters';
import rows from './sources.json';

/** A source as it is named to a reader. `status` says how it was read: seen, a reproduction, from memory, common practice. */
export interface SourceTitle {
  readonly title: string;
  readonly publisher: string;
  readonly year: string;
  readonly status: string;
}

const byId: ReadonlyMap<string, SourceTitle> = new Map(rows.map(({ id, title, publisher, year, status }) => [id, { title, publisher, year, status }]));

/** Ids of all sources of the tables. */
export const sourceIds: readonly string[] = rows.map((r) => r.id);

/** The tables' own shorthand in words of a reader. */
const plainly = (source: string): string =>
  source.replaceAll('from memory', 'remembered, not looked up').replaceAll('seen (secondary)', 'read in a second-hand source').replace(/^definition$/, 'fixed by definition');

/**
 * The title of a source id. `parameter:<id>` is answered with the source of that row of the starting values.
 * Undefined when nothing is known by that id.
 */
export function sourceTitle(id: string): SourceTitle | undefined {
  if (!id.startsWith('parameter:')) return byId.get(id);
  const row = parameters.find((p) => `parameter:${p.id}` === id);
  return row === undefined ? undefined : { title: plainly(row.source), publisher: '', year: '', status: row.status };
}
