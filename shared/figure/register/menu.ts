/** Rules of the room `menu` whose figures a person can open; the sentence of each is `rule.<id>` in the words. */
export const menuRules = [
  'menu.usualStay', 'menu.foodForStay', 'menu.cupsForStay', 'menu.hotShare', 'menu.hotDrinkShare', 'menu.coldDrinkShare',
  'menu.comingPart', 'menu.asAdults', 'menu.asAdultTakes', 'menu.arrivedBy', 'menu.sinceFirst', 'menu.sinceLast', 'menu.familySpread', 'menu.rangeSpread', 'menu.reserve',
  'menu.reserveRoom', 'menu.everybody', 'menu.thereBetween', 'menu.ownPortion', 'menu.sharedAppetite', 'menu.fixedPerAdult',
  'menu.drinkPerAdult', 'menu.wavePortions', 'menu.fixed', 'menu.portions', 'menu.total',
  'menu.foodPerHead', 'menu.drinksPerHead',
] as const;
