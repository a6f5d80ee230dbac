import type { View } from '../view';
import { Board } from './board';

/** The view Board, as the left rule lists it. */
export const boardView: View = { id: 'board', titleWord: 'view.board', group: 'now', component: Board };
