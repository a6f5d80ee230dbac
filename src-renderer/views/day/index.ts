import type { View } from '../view';
import { Day } from './day';

/** The view Day, as the left rule lists it. */
export const dayView: View = { id: 'day', titleWord: 'view.day', group: 'when', component: Day };
