import type { Event, Pot } from '../event';
import type { BurnerState } from '../kitchen';
import type { BrewValues } from './brew-values';
import type { Calendar } from './calendar';

/** What a kitchen offers to brewing. */
export interface BrewPlace {
  readonly event: Event;
  readonly values: BrewValues;
  readonly burners: readonly BurnerState[];
  /** Smallest first. */
  readonly pots: readonly Pot[];
  readonly calendar: Calendar;
  /** People whose work is tea; at least one. Nobody starts, strains or fills two drinks at once. */
  readonly hands: number;
}
