import type { Event, Person } from '../event';
import { minutesPerDay, Profile, type Claim, type SavedProfile } from '../measure';
import { dayValues, type DayValues } from './day-values';
import type { Job, Need } from './job';

/** A stretch of time. Minutes from midnight. */
export interface Spell {
  readonly from: number;
  readonly to: number;
}

/** A helper and how busy they are. Outside their hours they count as fully busy. */
export interface Helper {
  readonly person: Person;
  /** Place in the list. */
  readonly at: number;
  readonly busy: Profile;
  /** Minutes booked so far; the less busy is asked first. */
  booked: number;
  /** Stretches at the oil: nothing else may be given to them there. */
  atOil: Spell[];
  /** Jobs that may lie outside everybody's hours: busy during the hours of the day, so that nothing is given twice. */
  readonly atHome: Profile;
}

/** What does not change while a day is laid out in one order and another: worked out once for each job. Minutes. */
export interface JobFacts {
  readonly length: number;
  /** Some of it wants hands. */
  readonly hands: boolean;
  /** Minutes of one person it takes. */
  readonly minutesOfHands: number;
  /** The kitchen has what it needs at all. */
  readonly possible: boolean;
  readonly things: readonly Claim[];
  /** Things, and the hands of each helper, by their place in the list; filled when first asked for. */
  readonly withHelper: (readonly Claim[] | undefined)[];
  /** Who is asked for it, filled when first asked for. */
  asked: readonly (readonly Helper[])[] | null;
}

/** Draws so many watts on a circuit. */
export interface Power {
  readonly circuit: string;
  readonly profile: Profile;
  readonly watts: number;
}

/** People and things of the day with what is booked on them. */
export interface Resources {
  readonly helpers: readonly Helper[];
  readonly things: ReadonlyMap<string, Profile>;
  /** What draws on an electric circuit, by the thing that does: its circuit and its watts. */
  readonly power: ReadonlyMap<string, Power>;
  /** Times on the days before in which the household sleeps. */
  readonly night: Profile;
  /** Stretches in which a burner has been claimed for pans of oil; pans that share it claim it once. */
  readonly underOil: Map<string, readonly Spell[]>;
  readonly values: DayValues;
  /** Worked out once for each, whatever is booked: who is asked for some roles, what a thing draws on, what is known of a job. */
  readonly asked: Map<string, readonly (readonly Helper[])[]>;
  readonly drawsOn: Map<string, readonly Profile[]>;
  readonly facts: Map<Job, JobFacts>;
}

/** Everything booked at one moment. */
export interface Booked {
  readonly profiles: readonly SavedProfile[];
  readonly minutes: readonly number[];
  readonly atOil: readonly (readonly Spell[])[];
  readonly underOil: readonly (readonly [string, readonly Spell[]])[];
}

/** What the kitchen has, by kind and, where the kitchen names them, one by one. */
export function resourcesOf(event: Event): Resources {
  const { kitchen } = event;
  const things = new Map<string, Profile>([
    ['burner', new Profile(kitchen.burners.length)], ['pot', new Profile(kitchen.pots.length)], ['pan', new Profile(kitchen.pans.length)],
    ['oven', new Profile(kitchen.ovens)], ['counter', new Profile(kitchen.counterPlaces)],
  ]);
  for (const b of kitchen.burners) things.set(`burner:${b.id}`, new Profile(1));
  for (const p of kitchen.pots) things.set(`pot:${p.id}`, new Profile(1));
  for (const d of kitchen.dispensers) if (d.brewsW !== undefined) things.set(`urn:${d.id}`, new Profile(1));
  for (const p of kitchen.pans) things.set(`pan:${p.id}`, new Profile(1));
  const power = powerOf(event, things);
  const helpers = event.people.map((person, at): Helper => {
    const busy = new Profile(1);
    busy.add(-1e7, person.from, 1);
    busy.add(person.to, 1e7, 1);
    const atHome = new Profile(1);
    atHome.add(person.from, person.to, 1);
    return { person, at, busy, booked: 0, atOil: [], atHome };
  });
  const values = dayValues(event);
  return { helpers, things, power, night: nights(values), underOil: new Map(), values, asked: new Map(), drawsOn: new Map(), facts: new Map() };
}

/** Electric burners and urns on a circuit of the kitchen: what runs together is no more than it carries, less what else hangs on it. Nothing is limited where no circuit is named. */
function powerOf(event: Event, things: Map<string, Profile>): Map<string, Power> {
  const { burners, circuits, dispensers } = event.kitchen;
  const power = new Map<string, Power>();
  for (const { id, name, volts, amps, otherWatts } of circuits) {
    const profile = new Profile(Math.max(0, volts * amps - otherWatts));
    things.set(`circuit:${id}`, profile);
    for (const b of burners) if (b.circuit === id && (b.kind === 'electric' || b.kind === 'induction')) power.set(`burner:${b.id}`, { circuit: name, profile, watts: b.ratedW });
    for (const d of dispensers) if (d.circuit === id && d.brewsW !== undefined) power.set(`urn:${d.id}`, { circuit: name, profile, watts: d.brewsW });
  }
  return power;
}

const profiles = ({ helpers, things }: Resources): Profile[] => [...things.values(), ...helpers.flatMap((h) => [h.busy, h.atHome])];

/** What is booked now, to come back to. */
export const bookedNow = (resources: Resources): Booked => ({
  profiles: profiles(resources).map((p) => p.saved()), minutes: resources.helpers.map((h) => h.booked), atOil: resources.helpers.map((h) => [...h.atOil]), underOil: [...resources.underOil],
});

/** Comes back to what was booked: one set of people and things serves all orders in which a day is laid out. */
export function backTo(resources: Resources, booked: Booked): void {
  profiles(resources).forEach((p, at) => {
    const saved = booked.profiles[at];
    if (saved !== undefined) p.restore(saved);
  });
  resources.helpers.forEach((h, at) => {
    h.booked = booked.minutes[at] ?? 0;
    h.atOil = [...(booked.atOil[at] ?? [])];
  });
  resources.underOil.clear();
  for (const [burner, spells] of booked.underOil) resources.underOil.set(burner, spells);
}

/** Days before the event on which the household may have something to do: as long as a recipe may look back. */
const daysBefore = 28;

function nights(values: DayValues): Profile {
  const night = new Profile(1);
  for (let day = -daysBefore; day < 0; day += 1) {
    night.add(day * minutesPerDay, day * minutesPerDay + values.householdFrom, 1);
    night.add(day * minutesPerDay + values.householdTo, (day + 1) * minutesPerDay, 1);
  }
  return night;
}

/** Profiles a need draws on: a burner by name also takes one of all burners. */
export function profilesOf(resources: Resources, need: Need): readonly Profile[] {
  const known = resources.drawsOn.get(need.thing);
  if (known !== undefined) return known;
  const kind = need.thing.split(':')[0] ?? need.thing;
  const found = (kind === need.thing ? [kind] : [need.thing, kind]).flatMap((id) => resources.things.get(id) ?? []);
  resources.drawsOn.set(need.thing, found);
  return found;
}

/** True when the kitchen has the thing at all, as many as asked for. */
export const kitchenHas = (resources: Resources, need: Need): boolean =>
  profilesOf(resources, need).length > 0 && profilesOf(resources, need).every((p) => p.capacity >= need.count);

/** Books (or with -1 gives back) the claims of a job that starts at `start`. */
export function book(claims: readonly Claim[], start: number, sign: 1 | -1): void {
  for (const c of claims) c.profile.add(start + c.from, start + c.to, sign * c.amount);
}
