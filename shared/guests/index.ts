/** Public file of the room `guests`. */
export * from './types';
export { planGuests } from './plan-guests';
export { guestsRulesTable } from './rules/table';
export type { RuleInputs, RuleOutputs } from './rules/types';
export { invitedCounts } from './headcount';
