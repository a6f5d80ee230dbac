import type { ReactElement } from 'react';
import type { Plan } from '../plan';
import type { Formats } from '../words';
import type { Names } from './names';

/** Kinds of sheet, in the order they are offered and printed. */
export const sheetKinds = ['fry', 'drinks', 'shopping', 'prep', 'day', 'helpers', 'labels', 'boxes', 'firstBatch', 'oil', 'checklists', 'cooling', 'emergency'] as const;
/** A kind of sheet. */
export type SheetKind = (typeof sheetKinds)[number];
/** Paper the layout is made for; A4 210 × 297 mm, Letter 215.9 × 279.4 mm. */
export type Paper = 'a4' | 'letter';

/** What `sheetsOf` needs besides the plan. `printedAt` is ready text, since the core has no clock. */
export interface SheetOptions {
  readonly paper: Paper;
  readonly printedAt: string;
  readonly only?: readonly SheetKind[];
  /** Version letter for all sheets; worked out from the event's issued sheets when absent. */
  readonly version?: string;
  /** Letter this print replaces; used with `version`. */
  readonly replaces?: string;
}

/** One row of a sheet as it stands on paper: what a person calls it, and its texts by column. */
export interface PrintedRow {
  /** Stable while the row stands for the same thing: a batch, a round, a food. */
  readonly key: string;
  readonly name: string;
  readonly cells: Readonly<Record<string, string>>;
}

/** What hung on the wall before: its letter and its rows. */
export interface Reprint {
  readonly since: string;
  readonly rows: ReadonlyMap<string, PrintedRow>;
}

/** One printable document: head, content and what the foot of every page says. */
export interface Sheet {
  readonly kind: SheetKind;
  /** Unique among the sheets of a plan; stable while the pan, station or helper stays. */
  readonly id: string;
  readonly title: string;
  /** Proposed file name without extension: plain letters, digits and dashes. */
  readonly fileName: string;
  /** Head and content as static React elements. */
  readonly body: ReactElement;
  readonly paper: Paper;
  readonly version: string;
  readonly replaces: string | null;
  /** Equal fingerprints mean the same words on paper (head and foot left out). */
  readonly fingerprint: string;
  /** True when the event has this very content on record as printed. */
  readonly issued: boolean;
  /** Rows as printed; what a later print is compared with. */
  readonly rows: readonly PrintedRow[];
  /** Texts of the margin boxes. */
  readonly margins: { readonly running: string; readonly headcount: string; readonly printed: string; readonly page: string; readonly of: string };
}

/** Everything a content builder may read. */
export interface SheetContext {
  readonly plan: Plan;
  readonly formats: Formats;
  readonly names: Names;
  /** The paper that a sheet of this id replaces; null for a first print, or when its rows are not on record. Absent on screen. */
  readonly reprintOf?: (id: string) => Reprint | null;
}

/** A sheet before it has a head: what the builders return. */
export interface SheetDraft {
  readonly kind: SheetKind;
  readonly id: string;
  readonly title: string;
  /** Second line of the head beside event and day; empty when there is none. */
  readonly note: string;
  /** Rows to compare with at the next print; absent where a reprint shows no bars. */
  readonly rows?: readonly PrintedRow[];
  readonly content: ReactElement;
}
