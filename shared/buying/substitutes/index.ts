export { substitutionEffect, type SubstitutionEffect } from './effect';
export { putBack, standIns, substituteAmount, swapped } from './swap';
