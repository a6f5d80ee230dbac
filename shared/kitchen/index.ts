/** Public file of the room `kitchen`: pans, oil and burners. */
export * from './types';
export * from './rules';
export * from './pan-shape';
export * from './pan-figures';
export * from './oil-figures';
export * from './boiling';
export * from './by-jug';
export * from './plan';
