import { boardView } from './board';
import { guestsView } from './guests';
import { kitchenView } from './kitchen';
import { menuView } from './menu';
import type { View } from './view';

/** Every view of the product, in order. A view that does not exist is not listed. */
export const views: readonly View[] = [boardView, guestsView, menuView, kitchenView];
