/** Public file of the room `menu`. */
export * from './types';
export { planMenu } from './plan-menu';
export { scaleLine, scaleRecipe } from './scale';
export { contentsOf, type Contents } from './diets';
export * from './mass-balance';
export * from './ratio';
export { weightOf } from './line-weight';
export * from './per-head';
export { keptLines } from './kept/kept-foods';
export { keptParts, mayBeLeft, type KeptPart } from './kept/kept-things';
export type { Boxes } from './kept/kept-volume';
export { ownPortion, type OwnPortion } from './portion';
export { isRice } from './rice';
