import * as z from 'zod';
import type { HostMethod } from './methods';

const path = z.string().min(1).max(4096);
/** Longest text of a call, in characters. */
export const longestText = 8_000_000;
const text = z.string().max(longestText);
const none = z.object({}).default({});
const done = z.object({ done: z.literal(true) });

const settingFields = {
  theme: z.enum(['day', 'night', 'system']),
  units: z.enum(['metric', 'us']),
  clock: z.enum(['24', '12']),
  paper: z.enum(['a4', 'letter']).nullable(),
  folder: z.string().nullable(),
};
/** Preferences that belong to this computer, not to an event. */
export const settingsSchema = z.object({
  theme: settingFields.theme.default('system'),
  units: settingFields.units.default('metric'),
  clock: settingFields.clock.default('24'),
  paper: settingFields.paper.default(null),
  folder: settingFields.folder.default(null),
});
/** Fields to change; those not named stay. Without defaults, which would put every other field back. */
const settingsChange = z.object(settingFields).partial();
/** Preferences of this computer as they are kept. */
export type Settings = z.infer<typeof settingsSchema>;

const fileRef = z.object({ path, title: z.string(), day: z.string(), modified: z.number(), exists: z.boolean() });
/** An event file in a list. `modified`: milliseconds; 0 when it is not there any more. */
export type FileRef = z.infer<typeof fileRef>;

/** Something went wrong at the border. `code` for programs, `message` and `mend` for the cook: what is wrong, and what to do. */
export const problemSchema = z.object({ code: z.string(), message: z.string(), mend: z.string().optional() });

/**
 * The contract between a face and its host: input and output of every call. Both sides parse with it.
 * Answers travel as `{ok: true, value}` or `{ok: false, problem: {code, message, mend?}}`; nothing is thrown across.
 */
export const contract = {
  /** `dialogs`: the host has native open and save windows; without them the face shows its own list of the events folder. `now`: minutes after local midnight of `today`. */
  'app.info': { input: none, output: z.object({ host: z.enum(['desktop', 'local', 'test']), version: z.string(), dialogs: z.boolean(), today: z.string(), now: z.number(), openPath: z.string().nullable(), folder: z.string() }) },
  /** Waits for an event file that a later start hands over to the local host; null after a while without one. The desktop uses its menu channel. */
  'app.handed': { input: none, output: z.object({ path: path.nullable() }) },
  /** The face is drawn and listening. */
  'app.ready': { input: none, output: done },
  /** There are unsaved changes: the host asks before closing. */
  'app.setUnsaved': { input: z.object({ unsaved: z.boolean() }), output: done },
  'app.close': { input: none, output: done },
  'settings.get': { input: none, output: settingsSchema },
  'settings.set': { input: settingsChange, output: settingsSchema },
  'events.recent': { input: none, output: z.array(fileRef) },
  'events.forget': { input: z.object({ path }), output: done },
  'events.demos': { input: none, output: z.array(z.object({ id: z.string(), title: z.string() })) },
  'events.openDemo': { input: z.object({ id: z.string().regex(/^[a-z0-9-]+$/) }), output: z.object({ text }) },
  /** Event files in the events folder. */
  'events.folder': { input: none, output: z.object({ folder: z.string(), files: z.array(fileRef) }) },
  /** Native open window; null when the cook closed it. Only where `dialogs`. */
  'events.chooseOpen': { input: none, output: z.object({ path: path.nullable() }) },
  /** Native save window, or (without dialogs) the path for this name in the events folder; `taken` when a file is there already. */
  'events.chooseSave': { input: z.object({ name: z.string().min(1).max(200), extension: z.enum(['brimful', 'pdf', 'html', 'csv', 'txt', 'ics']).default('brimful') }), output: z.object({ path: path.nullable(), taken: z.boolean() }) },
  'events.open': { input: z.object({ path }), output: z.object({ path, text, modified: z.number() }) },
  /** Atomic save with `.bak`. `expect`: the modification time the face last saw; when the file changed outside, the answer is problem `changed-outside` and nothing is written. null: do not compare. A text that is no event is refused. A file that is gone is written anew. `warning`: the save stands, but something beside it did not work. */
  'events.save': { input: z.object({ path, text, expect: z.number().nullable() }), output: z.object({ path, modified: z.number(), warning: problemSchema.nullable() }) },
  /** Keeps unsaved work aside, so that a crash loses seconds at most. `id`: one per open document. `modified`: the time of the file as last seen, to compare with when the work is saved later. */
  'recovery.keep': { input: z.object({ id: z.string().regex(/^[A-Za-z0-9_-]+$/), path: z.string().nullable(), modified: z.number().nullable().default(null), text }), output: done },
  'recovery.list': { input: none, output: z.array(z.object({ id: z.string(), title: z.string(), path: z.string().nullable(), at: z.number() })) },
  'recovery.read': { input: z.object({ id: z.string().regex(/^[A-Za-z0-9_-]+$/) }), output: z.object({ text, path: z.string().nullable(), modified: z.number().nullable() }) },
  'recovery.discard': { input: z.object({ id: z.string().regex(/^[A-Za-z0-9_-]+$/) }), output: done },
  /** The household's recipes as a shelf file; until it has its own (`modified` null), those that come with the program. */
  'shelf.read': { input: none, output: z.object({ text, modified: z.number().nullable() }) },
  /** Atomic save of the household's recipes with `.bak`. `expect`: the `modified` last read; null where there was no shelf of the household's own: then there must still be none. When it changed, the answer is problem `shelf-changed` and nothing is written. */
  'shelf.write': { input: z.object({ text, expect: z.number().nullable() }), output: z.object({ modified: z.number() }) },
  /** Writes a PDF of a complete HTML document. `path`: one that `events.chooseSave` gave out, or inside the events folder; null: into the events folder under `name`, numbered when that is taken. */
  'print.pdf': { input: z.object({ html: text, name: z.string().min(1).max(200), path: path.nullable() }), output: z.object({ path, pages: z.number() }) },
  /** Native print window for a complete HTML document where the host has one; `handled: false` asks the face to print by itself. */
  'print.paper': { input: z.object({ html: text, name: z.string() }), output: z.object({ handled: z.boolean() }) },
  /** Writes a sheet or table as text; `path` as for `print.pdf`. */
  'files.write': { input: z.object({ path, text }), output: z.object({ path }) },
  /** Text of a calendar file written before, so that its revisions are counted on; null when there is none. `path` as for `files.write`. */
  'files.readCalendar': { input: z.object({ path }), output: z.object({ text: text.nullable() }) },
} as const satisfies Record<HostMethod, { input: z.ZodType; output: z.ZodType }>;

/** Type of the contract. */
export type Contract = typeof contract;
/** What a call takes, as the face writes it. */
export type CallInput<M extends HostMethod> = z.input<Contract[M]['input']>;
/** What a call answers. */
export type CallOutput<M extends HostMethod> = z.output<Contract[M]['output']>;

/** A problem at the border, ready to be read. */
export type Problem = z.infer<typeof problemSchema>;
/** Answer of a call. */
export type Answer<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: Problem };
