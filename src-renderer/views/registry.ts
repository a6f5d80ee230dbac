import { boardView } from './board';
import { dayView } from './day';
import { drinksView } from './drinks';
import { fryingView } from './frying';
import { guestsView } from './guests';
import { kitchenView } from './kitchen';
import { menuView } from './menu';
import { prepView } from './prep';
import { sheetsView } from './sheets';
import { shoppingView } from './shopping';
import type { View } from './view';

/** Every view of the product, in order. A view that does not exist is not listed. */
export const views: readonly View[] = [boardView, guestsView, menuView, kitchenView, shoppingView, prepView, fryingView, drinksView, dayView, sheetsView];
