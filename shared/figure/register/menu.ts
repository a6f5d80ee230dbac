/** Rules of the room `menu` whose figures a person can open; the sentence of each is `rule.<id>` in the words. */
export const menuRules = [
  'menu.meanStay', 'menu.usualStay', 'menu.foodForStay', 'menu.cupsForStay', 'menu.hotShare', 'menu.hotDrinkShare', 'menu.coldDrinkShare',
  'menu.plannedPeople', 'menu.asAdults', 'menu.thereBetween', 'menu.ownPortion', 'menu.sharedAppetite', 'menu.fixedPerAdult',
  'menu.drinkPerAdult', 'menu.wavePortions', 'menu.fixed', 'menu.portions', 'menu.total',
] as const;
