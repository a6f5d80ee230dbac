import type { Event } from '../../event';
import type { GuestsPlan } from '../../guests';
import type { MenuPlan } from '../../menu';
import { originNames } from '../origin-names';
import type { Need, ThingNeed } from '../types';
import { houseThings, type Bowls } from './house';
import { tableThings } from './table';
import { waterNeeds } from './water';

/** What the other rooms know that things are counted from. */
export interface ThingInputs {
  readonly guests: GuestsPlan;
  readonly menu: MenuPlan;
  /** All needs of food and drink: their tap water has to be brought where there is no tap. */
  readonly food: readonly Need[];
  /** Bowls of batter to be fried; none when left out. */
  readonly bowls?: Bowls;
}

/** All things a day needs that are not food, each with how it was counted; bottled gas comes after the day is laid out (`gasNeeds`). A room that knows one of them better leaves it out here. */
export const thingNeeds = (event: Event, { guests, menu, food, bowls = [] }: ThingInputs): ThingNeed[] => [
  ...tableThings(event, guests, menu), ...houseThings(event, guests, menu, bowls), ...waterNeeds(event, guests, food, originNames(event)),
];
export { gasNeeds } from './gas';
