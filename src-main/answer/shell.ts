import type { CallInput } from '../../shared/host';

/** Ending of a file a save window may be asked for. */
export type Ending = NonNullable<CallInput<'events.chooseSave'>['extension']>;

/** Native windows that ask for a file. Null means the cook closed the window. */
export interface Dialogs {
  open(folder: string): Promise<string | null>;
  save(suggested: string, ending: Ending): Promise<string | null>;
}

/** What differs between one host and another: the rest of every call is the same. */
export interface Shell {
  readonly kind: 'desktop' | 'local' | 'test';
  readonly version: string;
  /** The event file this start was asked to open. */
  readonly openPath: string | null;
  readonly dialogs: Dialogs | null;
  /** The next event file a later start handed over; null when there was none for a while. Only where the host cannot speak to the face by itself. `gone`: the face that asked is not there any more. */
  handed?(gone?: AbortSignal): Promise<string | null>;
  /** The face is drawn. */
  ready(): void;
  setUnsaved(unsaved: boolean): void;
  close(): void;
  /** A complete HTML document as PDF bytes. */
  pdf(html: string): Promise<Uint8Array>;
  /** Opens the native print window; false where there is none. */
  paper(html: string, name: string): Promise<boolean>;
}
