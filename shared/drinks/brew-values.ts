import type { Event } from '../event';
import { settle, type Settled } from '../household';

/** Reference values of brewing in force, looked up once for a whole plan. */
export interface BrewValues {
  readonly latent: Settled;
  readonly water: Settled;
  readonly milk: Settled;
  readonly metal: Settled;
  readonly boil: Settled;
  readonly pourMinutes: number;
  readonly coolMinutes: number;
  readonly waitMinutes: number;
}

/** The values of an event: the household's own figures before the table's. */
export const brewValues = (event: Event): BrewValues => ({
  latent: settle(event, 'fry.hfg'), water: settle(event, 'water.cRho'), milk: settle(event, 'milk.cRho'), metal: settle(event, 'pot.cp'), boil: settle(event, 'boil.C'),
  pourMinutes: Math.ceil(settle(event, 'brew.pourMinutes').value), coolMinutes: Math.ceil(settle(event, 'brew.coolMinutes').value), waitMinutes: settle(event, 'brew.waitMinutes').value,
});
