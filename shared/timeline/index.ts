/** Public file of the room `timeline`. */
export * from './types';
export { planDay, type DayInputs } from './plan-day';
export { planDayAndList } from './day-with-list';
export * from './schedule';
export { improveDay, type BetterDay, type DayProblem } from './improve-day';
export type { DayWorth } from './day-worth';
export { withRemedy, type Borrowed, type ClashRemedies, type DayRemedy, type RemedyChange, type RemedyCost, type RemedyNames } from './remedies';
export { remedyCandidates, type RemedyCandidate } from './remedy-candidates';
