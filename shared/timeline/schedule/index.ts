/** Public file of the scheduler: activities on renewable things, in whole minutes, with no word of kitchens. */
export type { Contradiction, Found, Lag, ScheduleProblem, Starts, Windows } from './types';
export { windowsOf } from './windows';
export { horizonOf } from './network';
export { firstAnswer } from './first-answer';
export { lowerBound } from './lower-bound';
export { search, type Better } from './search';
export { searchWithMaximalLags, type MaximalLagsAnswer } from './maximal-lags';
export { clashOf, restricted, type Clash as ClashingFacts } from './clash';
export { criticalPath, type CriticalPath } from './critical-path';
export { pick, randomFrom, type Random } from './random';
