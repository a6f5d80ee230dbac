import { houseFigureSchema, type Event } from '../event';
import { checkPart, settled } from './check';
import { placeOfRow, setRow } from './set-row';
import type { EditResult } from './types';

/** The household's own value of a reference figure, and why it is trusted more. */
export interface OwnFigure {
  readonly value: number;
  readonly unit?: string;
  readonly why: string;
  readonly date?: string;
}

/** Puts the household's own value in the place of a reference value (`figure` is its key); null goes back to the reference. */
export function setHouseFigure(event: Event, figure: string, own: OwnFigure | null): EditResult {
  const isIt = (row: { readonly figure: string }): boolean => row.figure === figure;
  const name = { id: 'edit.houseFigure', params: { figure } } as const;
  if (own === null) return settled({ ...event, houseFigures: setRow(event.houseFigures, isIt, null) }, name);
  const checked = checkPart(houseFigureSchema, { ...event.houseFigures.find(isIt), figure, ...own }, ['houseFigures', placeOfRow(event.houseFigures, isIt)]);
  return checked.ok ? settled({ ...event, houseFigures: setRow(event.houseFigures, isIt, checked.value) }, name) : checked.problem;
}
