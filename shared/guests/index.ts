/** Public file of the room `guests`. */
export * from './types';
export { planGuests } from './plan-guests';
export { guestsRulesTable } from './rules/table';
export type { RuleInputs, RuleOutputs } from './rules/types';
export { invitedCounts } from './headcount';
export { bandCountTerm, waveCountFigure } from './figure-counts';
export { meanStayFigure, sinceFigure, spentFigure, windowFigure } from './figure-stay';
export { meanStay, minutesSpent, windowMinutes, type Coming, type Stay } from './stay';
export { familySquares } from './crowd';
export { rangeHighFigure, rangeSpreadFigure } from './figure-range';
export { normalQuantile } from './chance/quantile';
export type { ThreePoint, Turnout } from './turnout';
