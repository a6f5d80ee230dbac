import type { View } from '../view';
import { Sheets } from './sheets';

/** The view Sheets, as the left rule lists it. */
export const sheetsView: View = { id: 'sheets', titleWord: 'view.sheets', group: 'paper', component: Sheets };
