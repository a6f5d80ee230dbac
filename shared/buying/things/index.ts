import type { Event } from '../../event';
import type { GuestsPlan } from '../../guests';
import type { MenuPlan } from '../../menu';
import { originNames } from '../origin-names';
import type { HeatUse, Need, ThingNeed } from '../types';
import { gasNeeds } from './gas';
import { houseThings } from './house';
import { tableThings } from './table';
import { waterNeeds } from './water';

/** What the other rooms know that things are counted from. */
export interface ThingInputs {
  readonly guests: GuestsPlan;
  readonly menu: MenuPlan;
  /** All needs of food and drink: their tap water has to be brought where there is no tap. */
  readonly food: readonly Need[];
  /** Burners at work. */
  readonly heat: readonly HeatUse[];
}

/** All things a day needs that are not food, each with how it was counted. A room that knows one of them better leaves it out here. */
export const thingNeeds = (event: Event, { guests, menu, food, heat }: ThingInputs): ThingNeed[] => [
  ...tableThings(event, guests, menu), ...houseThings(event, guests, menu), ...gasNeeds(event, heat), ...waterNeeds(event, guests, food, originNames(event)),
];
