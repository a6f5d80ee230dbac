import * as z from 'zod';
import { recipeSchema, type Recipe, type RoleId } from '../event';
import type { AmountText } from '../measure';
import type { Message } from '../words';
import type { SettledLine } from './recipe-settle';
import { readStepTime, type StepTime } from './recipe-step-time';
import type { ImportedRecipe } from './recipe-types';

/** The cook's answers: one for each line in its order (`leaveOut` for headings and what is not wanted), and what the foreign form does not say. */
export interface Settled {
  readonly id: string;
  readonly name?: string;
  readonly role: RoleId;
  readonly yield: { readonly amount: AmountText; readonly portions: number };
  readonly lines: readonly (SettledLine | 'leaveOut' | null)[];
  /** Minutes of each step as she confirmed them, in their order; as proposed where absent. */
  readonly steps?: readonly StepTime[];
}

/** A recipe in our form, or what is still open. `line`: number of the line, from 0; null when it concerns the whole. */
export type MadeRecipe =
  | { readonly ok: true; readonly recipe: Recipe; readonly notes: readonly Message[] }
  | { readonly ok: false; readonly open: readonly { readonly line: number | null; readonly message: Message }[] };

const longestStepName = 120;
const longestNotes = 4000;
const mostSteps = 40;

const cut = (text: string, most: number): string => (text.length <= most ? text : `${text.slice(0, most - 1).trimEnd()}…`);

/**
 * Minutes of each step, to be confirmed: as its words state them. What the whole is said to take beyond that goes to steps that state none: preparation
 * to the first of them, cooking to the last, both with somebody busy.
 */
export function proposeStepTimes({ steps, minutes }: Pick<ImportedRecipe, 'steps' | 'minutes'>): readonly StepTime[] {
  const read = steps.slice(0, mostSteps).map((step) => readStepTime(step.text));
  const told = read.reduce((sum, time) => sum + (time === null ? 0 : time.active + time.passive), 0);
  const prepare = minutes.prepare ?? 0;
  const cook = minutes.cook ?? Math.max(0, (minutes.total ?? 0) - prepare);
  const rest = Math.max(0, prepare + cook - told);
  const [first, last] = [read.indexOf(null), read.lastIndexOf(null)];
  return read.map((time, at) => {
    const more = (at === first ? Math.min(prepare, rest) : 0) + (at === last ? Math.max(0, rest - prepare) : 0);
    return time ?? { active: Math.min(more, 2880), passive: 0, does: 'other' };
  });
}

/** Steps one after the other. */
const stepsOf = ({ steps }: ImportedRecipe, times: readonly StepTime[]): z.input<typeof recipeSchema>['steps'] => steps.slice(0, mostSteps).map((step, at) => ({
  id: `step-${at + 1}`, name: cut(step.section === undefined ? step.text : `${step.section}: ${step.text}`, longestStepName), does: times[at]?.does ?? 'other',
  active: { fixed: times[at]?.active ?? 0 }, passive: { fixed: times[at]?.passive ?? 0 }, after: at === 0 ? [] : [`step-${at}`],
}));

/** Everything the steps have no room for, so that nothing of the text is lost. */
function notesOf({ description, steps, minutes: _minutes, yield: made }: ImportedRecipe): string {
  const long = steps.some((step) => step.text.length + (step.section?.length ?? 0) + 2 > longestStepName) || steps.length > mostSteps;
  return [description, made.texts.join(', '), ...(long ? steps.map((step, at) => `${at + 1}. ${step.section === undefined ? '' : `${step.section}: `}${step.text}`) : [])]
    .filter((part) => part !== '').join('\n');
}

/** A foreign recipe in our form, once every line is settled. What the notes are too short for is told. */
export function toRecipe(imported: ImportedRecipe, settled: Settled): MadeRecipe {
  const open = imported.lines.flatMap((line, at) => ((settled.lines[at] ?? null) === null ? [{ line: at, message: { id: 'recipe.settle.line', params: { text: line.text.slice(0, 80) } } } as const] : []));
  if (open.length > 0) return { ok: false, open };
  const notes = notesOf(imported);
  const read = recipeSchema.safeParse({
    id: settled.id, name: settled.name ?? imported.name, role: settled.role, yield: settled.yield,
    ingredients: settled.lines.flatMap((line) => (line === null || line === 'leaveOut' ? [] : [line])),
    steps: stepsOf(imported, settled.steps ?? proposeStepTimes(imported)),
    ...(imported.source === '' ? {} : { source: imported.source }), ...(notes === '' ? {} : { notes: cut(notes, longestNotes) }),
  });
  if (!read.success) return { ok: false, open: read.error.issues.slice(0, 20).map((issue) => ({ line: null, message: { id: 'recipe.settle.field', params: { field: issue.path.join(' ') } } })) };
  return { ok: true, recipe: read.data, notes: notes.length > longestNotes ? [{ id: 'recipe.settle.notesCut', params: { most: longestNotes } }] : [] };
}
