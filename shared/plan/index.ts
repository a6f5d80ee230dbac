/** Public file of the room: the plan of an event. */
export * from './types';
export * from './plan';
export { loanId, loanIdeas, type LoanIdea } from './borrow';
export * from './day-remedies';
