/** Exact batch and bowl planning, apart from kitchens and recipes. */
export * from './problem';
export * from './fixpoint';
export * from './solve';
export * from './balance';
export * from './least-unmet';
export * from './short-bound';
export * from './bowls';
export * from './smallness';
export * from './fresh-plan';
export * from './waiting';
export * from './mend';
