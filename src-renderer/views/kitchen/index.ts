import type { View } from '../view';
import { Kitchen } from './kitchen';

/** The view Kitchen, as the left rule lists it. */
export const kitchenView: View = { id: 'kitchen', titleWord: 'view.kitchen', group: 'who', component: Kitchen };
