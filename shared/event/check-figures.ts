import { convert, dimensionOf, isUnitId, amountOf, type UnitId } from '../measure';
import { legalRange, mostPerPerson, type LegalRange } from '../reference';
import type { Message } from '../words';
import { pathText, type EventProblem, type FieldPath } from './problem';
import type { Event } from './schema/event';
import type { HouseFigure } from './schema/kitchen';
import { whereOf } from './where';

/** Most of one dish that one person takes, in a unit. */
function mostOf(unit: UnitId): number {
  const dimension = dimensionOf(unit);
  if (dimension === 'count') return mostPerPerson.pieces;
  return mostPerPerson.gramsOrMl / Number(convert(amountOf(1, unit), dimension === 'mass' ? 'g' : 'ml').amount);
}

/** A portion is in its own unit, or else in that of the recipes of its role. */
function portionRange(event: Event, { figure, unit }: HouseFigure, range: LegalRange): LegalRange {
  if (!figure.startsWith('portion.')) return range;
  if (isUnitId(unit)) return { ...range, unit, most: mostOf(unit) };
  const counted = event.recipes.some((r) => `portion.${r.role}` === figure && dimensionOf(r.yield.amount.unit) === 'count');
  return { ...range, most: counted ? mostPerPerson.pieces : mostPerPerson.gramsOrMl };
}

/** House figures outside what their parameter may be, and portions nobody can eat. */
export function checkFigures(event: Event): EventProblem[] {
  const figures = event.houseFigures.flatMap((own, at): EventProblem[] => {
    const known = legalRange(own.figure);
    if (known === null) return [];
    const { label, unit, least, most, usual } = portionRange(event, own, known);
    if (own.value >= least && own.value <= most) return [];
    const path: FieldPath = ['houseFigures', at, 'value'];
    return [{ path: pathText(path), message: { id: 'event.houseRange', params: { number: at + 1, label, got: own.value, unit, least, most, usual } } }];
  });
  const portions = event.menu.dishes.flatMap(({ portion }, at): EventProblem[] => {
    if (portion === undefined || Number(portion.amount) <= mostOf(portion.unit)) return [];
    const path: FieldPath = ['menu', 'dishes', at, 'portion', 'amount'];
    return [{ path: pathText(path), message: { id: 'event.tooLarge', params: { where: whereOf(event, path), got: portion.amount, most: mostOf(portion.unit) } } }];
  });
  return [...figures, ...portions];
}

/** What the cook is told of house figures that nothing reads: kept in the file, without effect. */
export const figureNotes = (event: Event): Message[] => {
  const idle = [...new Set(event.houseFigures.map((h) => h.figure).filter((key) => legalRange(key) === null))];
  return idle.length === 0 ? [] : [{ id: 'event.note.idleFigures', params: { figures: idle.slice(0, 8), more: Math.max(0, idle.length - 8) } }];
};
