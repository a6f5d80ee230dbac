import type { View } from '../view';
import { Shopping } from './shopping';

/** The view Shopping, as the left rule lists it. */
export const shoppingView: View = { id: 'shopping', titleWord: 'view.shopping', group: 'howMuch', component: Shopping };
