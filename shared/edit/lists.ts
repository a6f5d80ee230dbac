import type * as z from 'zod';
import {
  borrowedSchema, burnerSchema, dayOf, dishSchema, dispenserSchema, kitchenSchema, ownJobSchema, ownLineSchema, panSchema, personSchema, potSchema, recipeSchema, shoppingOf, stationSchema, waveSchema,
  type Borrowed, type Burner, type DayChanges, type Dish, type Dispenser, type Event, type Kitchen, type OwnJob, type OwnLine, type Pan, type Person, type Pot, type Recipe, type Shopping, type Station, type Wave,
} from '../event';

/** The name a thing of the event goes by in sentences. */
export type ThingWord = 'wave' | 'dish' | 'recipe' | 'pan' | 'burner' | 'pot' | 'dispenser' | 'station' | 'person' | 'circuit' | 'ownLine' | 'borrowed' | 'ownJob';
/** A circuit of the house. */
export type Circuit = Kitchen['circuits'][number];

/** Where a list of the event is, and how one item of it is checked. */
export interface ListOf<T extends { readonly id: string }> {
  readonly thing: ThingWord;
  readonly path: readonly string[];
  readonly schema: z.ZodType<T>;
  /** Most items the schema allows. */
  readonly most: number;
  readonly get: (event: Event) => readonly T[];
  readonly put: (event: Event, list: T[]) => Event;
  /** What the cook calls it; never its short name where it has a better one. */
  readonly nameOf: (item: T, event: Event) => string;
}

const byName = (item: { readonly name: string }): string => item.name;
const inKitchen = (event: Event, part: Partial<Kitchen>): Event => ({ ...event, kitchen: { ...event.kitchen, ...part } });
/** An event with a part of what the cook added to the shopping list replaced. */
export const inShopping = (event: Event, part: Partial<Shopping>): Event => ({ ...event, shopping: { ...shoppingOf(event), ...part } });

/** An event with a part of what is laid down about the day replaced; nothing stays behind when nothing is laid down. */
export function inDay(event: Event, part: Partial<DayChanges>): Event {
  const next = { ...dayOf(event), ...part };
  const { dayJobs: _had, ...without } = event;
  return next.ownJobs.length === 0 && next.changes.length === 0 && next.order === undefined ? without : { ...event, dayJobs: next };
}

/** Waves of guests. */
export const waves: ListOf<Wave> = { thing: 'wave', path: ['guests', 'waves'], schema: waveSchema, most: 60, get: (e) => e.guests.waves, put: (e, list) => ({ ...e, guests: { ...e.guests, waves: list } }), nameOf: byName };
/** Dishes of the menu. */
export const dishes: ListOf<Dish> = { thing: 'dish', path: ['menu', 'dishes'], schema: dishSchema, most: 60, get: (e) => e.menu.dishes, put: (e, list) => ({ ...e, menu: { ...e.menu, dishes: list } }), nameOf: (d, e) => d.name ?? e.recipes.find((r) => r.id === d.recipe)?.name ?? d.recipe };
/** Recipes copied into the event. */
export const recipes: ListOf<Recipe> = { thing: 'recipe', path: ['recipes'], schema: recipeSchema, most: 300, get: (e) => e.recipes, put: (e, list) => ({ ...e, recipes: list }), nameOf: byName };
/** Pans to fry in. */
export const pans: ListOf<Pan> = { thing: 'pan', path: ['kitchen', 'pans'], schema: panSchema, most: 20, get: (e) => e.kitchen.pans, put: (e, list) => inKitchen(e, { pans: list }), nameOf: byName };
/** Burners. */
export const burners: ListOf<Burner> = { thing: 'burner', path: ['kitchen', 'burners'], schema: burnerSchema, most: 30, get: (e) => e.kitchen.burners, put: (e, list) => inKitchen(e, { burners: list }), nameOf: byName };
/** Pots. */
export const pots: ListOf<Pot> = { thing: 'pot', path: ['kitchen', 'pots'], schema: potSchema, most: 60, get: (e) => e.kitchen.pots, put: (e, list) => inKitchen(e, { pots: list }), nameOf: byName };
/** Flasks and urns. */
export const dispensers: ListOf<Dispenser> = { thing: 'dispenser', path: ['kitchen', 'dispensers'], schema: dispenserSchema, most: 40, get: (e) => e.kitchen.dispensers, put: (e, list) => inKitchen(e, { dispensers: list }), nameOf: byName };
/** Fry stations. */
export const stations: ListOf<Station> = { thing: 'station', path: ['kitchen', 'stations'], schema: stationSchema, most: 10, get: (e) => e.kitchen.stations, put: (e, list) => inKitchen(e, { stations: list }), nameOf: byName };
/** Circuits of the house. */
export const circuits: ListOf<Circuit> = { thing: 'circuit', path: ['kitchen', 'circuits'], schema: kitchenSchema.shape.circuits.unwrap().element, most: 60, get: (e) => e.kitchen.circuits, put: (e, list) => inKitchen(e, { circuits: list }), nameOf: byName };
/** Helpers. */
export const people: ListOf<Person> = { thing: 'person', path: ['people'], schema: personSchema, most: 60, get: (e) => e.people, put: (e, list) => ({ ...e, people: list }), nameOf: byName };
/** The cook's own lines of the shopping list. */
export const ownLines: ListOf<OwnLine> = { thing: 'ownLine', path: ['shopping', 'ownLines'], schema: ownLineSchema, most: 200, get: (e) => shoppingOf(e).ownLines, put: (e, list) => inShopping(e, { ownLines: list }), nameOf: byName };
/** What is borrowed. */
export const borrowed: ListOf<Borrowed> = { thing: 'borrowed', path: ['shopping', 'borrowed'], schema: borrowedSchema, most: 100, get: (e) => shoppingOf(e).borrowed, put: (e, list) => inShopping(e, { borrowed: list }), nameOf: byName };
/** Jobs the cook added to the day. */
export const ownJobs: ListOf<OwnJob> = { thing: 'ownJob', path: ['dayJobs', 'ownJobs'], schema: ownJobSchema, most: 200, get: (e) => dayOf(e).ownJobs, put: (e, list) => inDay(e, { ownJobs: list }), nameOf: byName };
