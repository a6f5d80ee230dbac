import type { RulesTable } from '../../kitchen';
import { batchesTable } from './batches-table';
import { batterTable } from './batter-table';
import { fryTable } from './fry-table';
import { pieceTable } from './piece-table';

export * from './pack';
export * from './piece';
export * from './energy';
export * from './dip';
export * from './throughput';
export * from './balance';

/** Every rule of frying, pieces and batter by id, with the keys of the rule register. */
export const fryingRulesTable: RulesTable = { ...pieceTable, ...fryTable, ...batterTable, ...batchesTable };
