import type { View } from '../view';
import { Prep } from './prep';

/** The view Prep, as the left rule lists it. */
export const prepView: View = { id: 'prep', titleWord: 'view.prep', group: 'howMuch', component: Prep };
