import type { Event } from '../event';
import { settled } from './check';
import { inShopping } from './lists';
import type { EditResult } from './types';

/** Says that all water has to be brought along, or that there is a tap. */
export const setCarriesWater = (event: Event, carries: boolean): EditResult =>
  settled(inShopping(event, { carriesWater: carries }), { id: 'buying.edit.water', params: { carries } });
