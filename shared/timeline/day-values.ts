import type { Event } from '../event';
import { settle } from '../household';

const rows = {
  shop: 'day.shop', perLine: 'day.shopLine', longestShop: 'day.shopLongest', shopsOpen: 'day.shopsOpen', shopsShut: 'day.shopsShut', keepsDays: 'day.keepsDays',
  tables: 'day.tables', station: 'day.station', drinks: 'day.drinksTable', setUpWindow: 'day.setUpWindow', tablesWindow: 'day.tablesWindow',
  round: 'day.round', putOut: 'day.putOut', freshBowl: 'day.freshBowl', serveSpare: 'serve.spare', breakEvery: 'day.breakEvery', breakLength: 'day.breakLength', between: 'day.between', cool: 'day.cool', kitchen: 'day.kitchen', diningRoom: 'day.diningRoom', perGuest: 'day.perGuest', guestMost: 'day.guestMost', oil: 'day.oil',
  meal: 'day.meal', mealShort: 'day.mealShort', mealFrom: 'day.mealFrom', washRound: 'day.washRound', washEvery: 'day.washEvery', washPot: 'day.washPot', standMost: 'day.standMost', bins: 'day.bins', binsEvery: 'day.binsEvery',
  store: 'day.store', storeAfter: 'day.storeAfter', check: 'day.check',
  handsOn: 'day.handsOn', watching: 'day.watching', shortestWatch: 'day.shortestWatch', homeLater: 'day.homeLater', tooEarly: 'day.tooEarly',
  householdFrom: 'day.householdFrom', householdTo: 'day.householdTo',
} as const;

/**
 * Values the day is planned with, in force for an event: minutes of the jobs around cooking, shop hours (minutes after midnight), shares of
 * attention (0-1). Each is a row `day.*` of the reference parameters, common practice unless the household has its own figure.
 */
export type DayValues = Readonly<Record<keyof typeof rows, number>>;

/** Whole minutes, at least one, for what becomes the length of a job. */
const length = (n: number): number => Math.max(1, Math.round(n));

/** The values of an event: the household's own figures before the table's. */
export function dayValues(event: Event): DayValues {
  const value = (key: keyof typeof rows): number => settle(event, rows[key]).value;
  return {
    shop: length(value('shop')), perLine: value('perLine'), longestShop: length(value('longestShop')), shopsOpen: value('shopsOpen'), shopsShut: value('shopsShut'), keepsDays: value('keepsDays'),
    tables: length(value('tables')), station: length(value('station')), drinks: length(value('drinks')), setUpWindow: value('setUpWindow'), tablesWindow: value('tablesWindow'),
    round: length(value('round')), putOut: length(value('putOut')), freshBowl: length(value('freshBowl')), serveSpare: value('serveSpare'), breakEvery: value('breakEvery'), breakLength: value('breakLength'), between: length(value('between')), cool: length(value('cool')), kitchen: length(value('kitchen')), diningRoom: length(value('diningRoom')),
    perGuest: value('perGuest'), guestMost: value('guestMost'), oil: length(value('oil')),
    meal: length(value('meal')), mealShort: length(value('mealShort')), mealFrom: value('mealFrom'), washRound: length(value('washRound')), washEvery: length(value('washEvery')), washPot: length(value('washPot')), standMost: value('standMost'),
    bins: length(value('bins')), binsEvery: length(value('binsEvery')), store: length(value('store')), storeAfter: value('storeAfter'), check: length(value('check')),
    handsOn: share(value('handsOn')), watching: share(value('watching')), shortestWatch: value('shortestWatch'), homeLater: value('homeLater'), tooEarly: value('tooEarly'),
    householdFrom: value('householdFrom'), householdTo: value('householdTo'),
  };
}

/** A share of one person: never none, never more than one. */
const share = (n: number): number => Math.min(1, Math.max(0.01, n));
