import type { Plan } from '../../plan';
import type { Formats } from '../../words';
import { namesOf } from '../names';
import { isChanged, oldText, reprintFrom } from '../reprint';
import type { PrintedRow, SheetContext } from '../types';
import { printsOf } from '../version';
import { printedDayRow } from './printed';
import { dayRows } from './rows';

/** A job that stands on a helper's printed page at another minute than it has now; times as texts, as they are on paper. */
export interface PaperMove {
  readonly job: string;
  readonly was: string;
  readonly now: string;
}

/** A helper's printed page that is out of date. */
export interface StalePage {
  readonly person: string;
  readonly name: string;
  /** Letter of the page that hangs there. */
  readonly version: string;
  readonly moved: readonly PaperMove[];
  /** Rows that are new, gone, or say something else than another minute. */
  readonly others: number;
}

/** Which helpers' printed pages no longer say what the plan says, in the order of the helpers. Pages printed by an older version, without rows on record, are left out. */
export function stalePages(plan: Plan, formats: Formats): readonly StalePage[] {
  const context: SheetContext = { plan, formats, names: namesOf(plan, formats) };
  return plan.event.people.flatMap((person): StalePage[] => {
    const latest = printsOf(plan.event, { kind: 'helpers', id: `helper-${person.id}` }).at(-1);
    if (latest?.rows === undefined) return [];
    const paper = reprintFrom(latest.version, latest.rows);
    const tasks = plan.day.tasks.filter((t) => t.who.includes(person.id) && !t.id.endsWith('/stands'));
    const rows = dayRows(tasks, plan.frying, 'own').flatMap((row): PrintedRow[] => { const p = printedDayRow(row, false, context); return [p.row, ...p.entries]; });
    const keys = new Set(rows.map((r) => r.key));
    const moved = rows.flatMap((row): PaperMove[] => {
      const cell = row.cells['start'] === undefined ? 'entry' : 'start';
      const was = oldText(paper, row, cell);
      return was === null ? [] : [{ job: row.name, was, now: row.cells[cell] ?? '' }];
    });
    const changed = rows.filter((row) => isChanged(paper, row)).length;
    const gone = [...paper.rows.keys()].filter((key) => !keys.has(key)).length;
    return changed + gone === 0 ? [] : [{ person: person.id, name: person.name, version: latest.version, moved, others: changed - moved.length + gone }];
  });
}
