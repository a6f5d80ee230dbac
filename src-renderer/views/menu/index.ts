import type { View } from '../view';
import { Menu } from './menu';

/** The view Menu, as the left rule lists it. */
export const menuView: View = { id: 'menu', titleWord: 'view.menu', group: 'who', component: Menu };
