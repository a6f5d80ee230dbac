import type { View } from '../view';
import { Frying } from './frying';

/** The view Frying, as the left rule lists it. */
export const fryingView: View = { id: 'frying', titleWord: 'view.frying', group: 'howMuch', component: Frying };
