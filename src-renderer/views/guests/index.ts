import type { View } from '../view';
import { Guests } from './guests';

/** The view Guests, as the left rule lists it. */
export const guestsView: View = { id: 'guests', titleWord: 'view.guests', group: 'who', component: Guests };
