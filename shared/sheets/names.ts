import { useWord } from '../buying';
import { foodCalled, readableId } from '../event';
import type { Plan } from '../plan';
import { ingredient, sections } from '../reference';
import { say, sayLoose, type Formats } from '../words';

/** Names of things by their id, as the cook wrote them. An unknown id comes back readable, dashes as spaces. */
export interface Names {
  readonly ingredient: (id: string) => string;
  readonly dish: (id: string) => string;
  readonly wave: (id: string) => string;
  readonly person: (id: string) => string;
  /** A pan, pot, burner, flask, station, or a kind of thing such as `counter`. */
  readonly thing: (id: string) => string;
  /** A section of the shop. */
  readonly section: (id: string) => string;
}

interface Named {
  readonly id: string;
  readonly name: string;
}

function lookup(rows: readonly Named[]): (id: string) => string {
  const byId = new Map(rows.map((row) => [row.id, row.name]));
  return (id) => byId.get(id) ?? readableId(id);
}

/** Makes the lookups of one plan. */
export function namesOf(plan: Plan, formats: Formats): Names {
  const { kitchen, people } = plan.event;
  const things = lookup([...kitchen.pans, ...kitchen.burners, ...kitchen.pots, ...kitchen.dispensers, ...kitchen.stations]);
  const dishes = lookup(plan.menu.dishes);
  return {
    ingredient: (id) => plan.buying.lines.find((line) => line.ingredient === id)?.name ?? ingredient(id)?.name ?? foodCalled(id, plan.event.recipes),
    dish: (id) => {
      const use = plan.menu.dishes.some((d) => d.id === id) ? null : useWord(id);
      return id === 'frying-oil' ? say(formats, 'sheets.shopping.oilOrigin') : use === null ? dishes(id) : say(formats, use);
    },
    wave: lookup(plan.guests.waves),
    person: lookup(people),
    thing: (id) => {
      // Jobs name a thing by kind and id (`pot:large`) when it is a certain one.
      const own = id.slice(id.indexOf(':') + 1);
      const word = sayLoose(formats, `sheets.thing.${own}`);
      return word === `sheets.thing.${own}` ? things(own) : word;
    },
    section: lookup([...sections, { id: 'other', name: say(formats, 'buying.section.other') }]),
  };
}
