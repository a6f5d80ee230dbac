import type { Task } from '../../timeline';
import { say, sayMessage } from '../../words';
import { midSentence } from '../food-name';
import type { SheetContext } from '../types';
import type { DayRow } from './rows';
import { allWho, whoWords } from './task-words';

/** What a row says: its name, and shorter lines below. */
export interface RowWords {
  readonly title: string;
  readonly lines: readonly string[];
  /** The times that the only line names one after the other, with what stands before them; absent where the line is one sentence. */
  readonly entries?: readonly { readonly key: string; readonly text: string }[];
}

/** Words that stay on one line. */
const whole = (words: string): string => words.replaceAll(' ', '\u00a0');

/** The part that runs by itself after a step, and who looks in on it. */
function byItselfWords(task: Task, before: Task, context: SheetContext): string {
  const { formats: f } = context;
  const span = { from: task.start, to: task.end };
  const runs = task.start > before.end ? say(f, 'sheets.day.runsFrom', span) : say(f, 'sheets.day.runs', span);
  return task.who.length > 0 ? say(f, 'sheets.day.looksIn', { runs, who: whoWords(task, context) }) : runs;
}

/** One later part of a round: strain, fill; named with its person where the row has several. */
function partWords(task: Task, several: boolean, context: SheetContext): string {
  const { formats: f } = context;
  const part = { at: task.start, what: task.kind === 'fill' ? midSentence(sayMessage(f, task.name)) : say(f, 'sheets.day.strain') };
  return several ? say(f, 'sheets.day.partBy', { ...part, who: whoWords(task, context) }) : say(f, 'sheets.day.part', part);
}

function roundWords({ tasks }: DayRow, context: SheetContext): RowWords {
  const { plan, formats: f } = context;
  const hands = tasks.filter((t) => t.attention > 0 || t.who.length > 0);
  const [first = tasks[0], ...later] = hands;
  if (first === undefined) return { title: '', lines: [] };
  const round = plan.drinks.rounds.find((r) => r.number === first.round);
  const boils = round !== undefined && round.heatMinutes.value > 0 && round.startAt === first.start ? [say(f, 'sheets.drinks.boils', { at: round.boilAt })] : [];
  const several = new Set(hands.map((t) => whoWords(t, context))).size > 1;
  const parts = [...boils, ...later.map((t) => partWords(t, several, context))];
  return { title: sayMessage(f, first.name), lines: parts.length > 0 ? [parts.join('; ')] : [] };
}

/** Batches by number: "batches 1 to 6", or their count where the other pan's numbers lie between. */
function numberWords(numbers: readonly number[], context: SheetContext): string {
  const [from = 0] = numbers;
  const to = numbers.at(-1) ?? from;
  return say(context.formats, 'sheets.day.batches', { n: numbers.length, from, to });
}

function stretchWords({ tasks }: DayRow, told: 'where' | 'each', context: SheetContext): RowWords {
  const { plan, formats: f, names } = context;
  const fry = tasks.filter((t) => t.kind === 'fry');
  const bowls = tasks.filter((t) => t.kind === 'bowl');
  const station = plan.frying.batches.find((b) => b.number === fry[0]?.batch)?.station ?? '';
  const title = say(f, 'sheets.day.stretch', { station: names.thing(station), batches: numberWords(fry.map((t) => t.batch ?? 0), context) });
  if (told === 'each') {
    const entries = fry.map((t) => ({ key: t.id, text: whole(say(f, 'sheets.day.batchAt', { at: t.start, batch: t.batch ?? 0 })) }));
    return { title, lines: [say(f, 'sheets.day.follow', { batches: entries.map((e) => e.text).join(', ') })], entries };
  }
  const mixed = bowls.length === 0 ? [] : [say(f, 'sheets.day.bowls', { numbers: bowls.map((t) => t.bowl ?? 0), at: bowls.map((t) => f.clock(t.start)).join(', '), who: allWho(bowls, context) })];
  return { title, lines: [say(f, 'sheets.day.seeFry'), ...mixed] };
}

/** Jobs of a list, each with its minute and its person. */
function listed(tasks: readonly Task[], context: SheetContext): Pick<RowWords, 'lines' | 'entries'> {
  const entries = tasks.map((t) => ({ key: t.id, text: whole(say(context.formats, 'sheets.day.serveAt', { at: t.start, who: whoWords(t, context) })) }));
  return { lines: [entries.map((e) => e.text).join(', ')], entries };
}

function serveWords({ tasks: [first, ...rest] }: DayRow, context: SheetContext): RowWords {
  const { formats: f } = context;
  if (first === undefined) return { title: '', lines: [] };
  return { title: sayMessage(f, first.name), ...(rest.length === 0 ? { lines: [] } : listed([first, ...rest], context)) };
}

/** All washing-up, cooling or breaks of a day under one name, each with its minute and its person. Pots that only stand are left out. */
function listWords({ kind, tasks }: DayRow, context: SheetContext): RowWords {
  const { formats: f } = context;
  const hands = tasks.filter((t) => t.who.length > 0);
  return { title: say(f, kind === 'wash' ? 'sheets.day.washing' : kind === 'cool' ? 'sheets.day.cools' : 'sheets.day.rests'), ...listed(hands, context) };
}

function jobWords({ tasks: [first, ...rest] }: DayRow, context: SheetContext): RowWords {
  if (first === undefined) return { title: '', lines: [] };
  const note = first.note === undefined ? [] : [sayMessage(context.formats, first.note)];
  return { title: sayMessage(context.formats, first.name), lines: [...note, ...rest.map((t) => byItselfWords(t, first, context))] };
}

/** The words of a row. On the wall a fry stretch names its bowls and points to the fry sheet; on a helper's own page it lists every batch. */
export function rowWords(row: DayRow, wall: boolean, context: SheetContext): RowWords {
  if (row.kind === 'round') return roundWords(row, context);
  if (row.kind === 'stretch') return stretchWords(row, wall ? 'where' : 'each', context);
  if (row.kind === 'wash' || row.kind === 'rest' || row.kind === 'cool') return listWords(row, context);
  return row.kind === 'serve' ? serveWords(row, context) : jobWords(row, context);
}
