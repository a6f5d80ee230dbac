export * from './newton';
export * from './brew';
export { drinksRulesTable } from './table';
