import type { Event } from '../event';
import type { Figure } from '../figure';
import { settle, type Settled } from '../household';
import { boilingPoint } from '../kitchen';

/** Reference values of brewing in force, looked up once for a whole plan. */
export interface BrewValues {
  readonly latent: Settled;
  readonly water: Settled;
  readonly milk: Settled;
  readonly metal: Settled;
  /** Boiling point in this kitchen, °C, by its height above the sea. */
  readonly boil: Figure;
  readonly pourMinutes: number;
  /** Filling a pot and setting it on the heat, minutes; a round without a burner up to `shortRound` minutes is hands from start to end. */
  readonly startMinutes: number;
  readonly shortRound: number;
  readonly coolMinutes: number;
  readonly waitMinutes: number;
  /** The first fill, before the first guest can want it; a later one, before the vessel runs dry; minutes. */
  readonly fillLead: number;
  readonly refillLead: number;
  readonly tripMinutes: number;
  /** Cups filled in a minute from one vessel. */
  readonly tapPerMinute: number;
  /** How far a fill moves ahead of its time for want of hands: the first of the day, and any later one; minutes. */
  readonly firstAhead: number;
  readonly laterAhead: number;
  readonly strainedC: number;
  readonly vesselC: number;
  readonly vesselCp: number;
  readonly openCooling: number;
  readonly coldC: number;
}

/** The values of an event: the household's own figures before the table's. */
export function brewValues(event: Event): BrewValues {
  const value = (id: string): number => settle(event, id).value;
  const boil = boilingPoint(event);
  const lower = value('boil.C') - boil.value;
  // What is boiled is as far below the boiling point as at sea level, unless the household has measured it.
  const boiled = (id: string): number => (settle(event, id).origin.kind === 'house' ? value(id) : value(id) - lower);
  return {
    latent: settle(event, 'fry.hfg'), water: settle(event, 'water.cRho'), milk: settle(event, 'milk.cRho'), metal: settle(event, 'pot.cp'), boil,
    pourMinutes: Math.ceil(value('brew.pourMinutes')), startMinutes: Math.ceil(value('brew.startMinutes')), shortRound: value('brew.shortRound'), coolMinutes: Math.ceil(value('brew.coolMinutes')), waitMinutes: value('brew.waitMinutes'),
    fillLead: Math.max(0, Math.round(value('brew.fillLead'))), refillLead: Math.max(0, Math.round(value('drinks.refillLead'))), tripMinutes: Math.max(1, Math.round(value('drinks.tripMinutes'))),
    tapPerMinute: Math.max(1, value('drinks.tapPerMinute')), firstAhead: Math.max(0, Math.round(value('brew.firstAhead'))), laterAhead: Math.max(0, Math.round(value('brew.laterAhead'))),
    strainedC: boiled('brew.strainedC'), vesselC: boiled('brew.vesselC'), vesselCp: value('brew.vesselCp'), openCooling: value('cool.vesselOpen'), coldC: value('drink.coldC'),
  };
}
