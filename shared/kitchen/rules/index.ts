import { cookingTable } from './cooking-table';
import type { RulesTable } from './inputs';
import { oilTable } from './oil-table';
import { panTable } from './pan-table';
import { waterTable } from './water-table';

export * from './inputs';
export * from './oil';
export * from './vessel';
export * from './water';
export * from './boiling';
export * from './cooking';
export { levelRise } from './pan-table';

/** Every rule of pans, oil, water, burners, rice and pulses by id, with the keys of the rule register. */
export const kitchenRulesTable: RulesTable = { ...panTable, ...oilTable, ...waterTable, ...cookingTable };
