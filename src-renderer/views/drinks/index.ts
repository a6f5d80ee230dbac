import type { View } from '../view';
import { Drinks } from './drinks';

/** The view Drinks, as the left rule lists it. */
export const drinksView: View = { id: 'drinks', titleWord: 'view.drinks', group: 'howMuch', component: Drinks };
