import type { BandId, Dish, Event, Recipe } from '../event';
import { figure, most, minus, plus, sumOf, divide, times, worked, type Figure, type Term } from '../figure';
import { bandFactor } from '../reference';
import { inForce, knownTerm, type Known } from './in-force';
import { servedAs } from './portion';

/** A drink of the menu that guests take as they like. */
export interface Drink {
  readonly dish: Dish;
  readonly recipe: Recipe;
}

const isHot = (recipe: Recipe): boolean => recipe.brewing?.hot ?? recipe.role === 'hotDrink';
// Where a recipe does not tell, a hot drink is taken to have caffeine: children are then not counted for it.
const isCaffeinated = (recipe: Recipe): boolean => recipe.brewing?.caffeinated ?? recipe.role === 'hotDrink';

const takeUps = (drinks: readonly Drink[]): number => drinks.reduce((sum, d) => sum + d.dish.takeUp, 0);

function takeUpList(key: string, event: Event, drinks: readonly Drink[]): Term {
  const paths = drinks.map((d) => `menu.dishes[${event.menu.dishes.indexOf(d.dish)}].takeUp`);
  return { key, label: { word: 'menu.term.takeUps' }, value: drinks.map((d) => d.dish.takeUp), unit: '', origin: { kind: 'entered', path: paths.join(', ') } };
}

/** The drinks of a menu: cups, not made in a fixed number. */
export const drinksOf = (menu: readonly Drink[]): Drink[] => menu.filter((m) => servedAs(m.recipe) === 'cup' && m.dish.served.kind !== 'fixed');

/** Share of an adult's cups that is this kind of hot drink. Take-ups that add up to more than 1 share the cups; less leaves the rest undrunk. */
function hotShare(event: Event, drinks: readonly Drink[], caffeinated: boolean): Figure {
  const hot = drinks.filter((d) => isHot(d.recipe) && isCaffeinated(d.recipe) === caffeinated);
  return figure(takeUps(hot) / Math.max(1, takeUps(drinks)), '', () => ({
    rule: 'menu.hotShare',
    terms: [takeUpList('hot', event, hot), takeUpList('all', event, drinks)],
    sum: divide(sumOf('hot'), most(1, sumOf('all'))),
  }));
}

/**
 * Share of the cups of one person of a band that is this drink, an adult's cups being 1. Hot drinks: take-up over all take-ups, times the
 * band's liking of hot drinks. Cold ones: what the band drinks in all, less its hot drinks, shared by take-up among the cold.
 */
export function drinkShare(event: Event, drinks: readonly Drink[], drink: Drink, band: BandId): Figure {
  const row = bandFactor(band);
  const factor = (kind: 'cold' | 'hot' | 'hotCaffeinated'): Known => inForce(event, `band.${band}.${kind}`, row[kind], '', row.source);
  const own = (): Term => takeUpList('takeUp', event, [drink]);
  const all = (): Term => takeUpList('all', event, drinks);
  const sumAll = Math.max(1, takeUps(drinks));
  if (isHot(drink.recipe)) {
    const liking = factor(isCaffeinated(drink.recipe) ? 'hotCaffeinated' : 'hot');
    return figure((drink.dish.takeUp / sumAll) * liking.value, '', () => ({
      rule: 'menu.hotDrinkShare',
      terms: [own(), all(), knownTerm('band', 'menu.term.bandHot', liking)],
      sum: times(divide(sumOf('takeUp'), most(1, sumOf('all'))), 'band'),
    }));
  }
  const [plain, caffeinated] = [hotShare(event, drinks, false), hotShare(event, drinks, true)];
  const [cold, hot, hotCaffeinated] = [factor('cold'), factor('hot'), factor('hotCaffeinated')];
  const coldOnes = drinks.filter((d) => !isHot(d.recipe));
  const hotTakeUps = takeUps(drinks) - takeUps(coldOnes);
  const room = Math.max(takeUps(coldOnes), sumAll - hotTakeUps);
  const left = Math.max(0, cold.value - (plain.value * hot.value + caffeinated.value * hotCaffeinated.value));
  return figure(room <= 0 ? 0 : (left * drink.dish.takeUp) / room, '', () => ({
    rule: 'menu.coldDrinkShare',
    terms: [
      own(), all(), takeUpList('colds', event, coldOnes),
      knownTerm('band', 'menu.term.bandCold', cold), knownTerm('hotBand', 'menu.term.bandHot', hot), knownTerm('hotBandCaffeine', 'menu.term.bandHotCaffeine', hotCaffeinated),
      worked('hotPart', { word: 'menu.term.hotShare' }, plain), worked('hotPartCaffeine', { word: 'menu.term.hotShareCaffeine' }, caffeinated),
    ],
    sum: room <= 0 ? times(0, sumOf('takeUp')) : divide(
      times(most(0, minus('band', plus(times('hotPart', 'hotBand'), times('hotPartCaffeine', 'hotBandCaffeine')))), sumOf('takeUp')),
      most(sumOf('colds'), minus(most(1, sumOf('all')), minus(sumOf('all'), sumOf('colds')))),
    ),
  }));
}
