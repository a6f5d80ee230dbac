import type { Task, TaskKind } from '../../timeline';

/** Batches and bowls are followed from the fry sheet and rounds from the drinks sheet, each by its own minute; the rest after the guests can wait. */
const marked: ReadonlySet<TaskKind> = new Set(['step', 'setUp', 'heatOil']);

/** A job that makes something late for the guests when it starts a minute later, and that no sheet of its own keeps in time. Few enough that the mark means something. */
export const mustNotSlip = (task: Task): boolean => task.slack <= 0 && marked.has(task.kind) && (task.attention > 0.2 || task.kind === 'heatOil');
