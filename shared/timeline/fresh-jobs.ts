import type { CookingPlan } from '../cooking';
import type { Event } from '../event';
import type { MenuPlan } from '../menu';
import type { DayValues } from './day-values';
import type { Job } from './job';

/** A fresh bowl, or what a further cooking brings to the table. */
interface Fresh {
  readonly id: string;
  readonly dish: string;
  readonly at: number;
  readonly number: number;
  readonly of: number;
  readonly amount: { readonly amount: string; readonly unit: string };
  /** May be put out a little sooner, with others. */
  readonly isCold: boolean;
}

/** Bowls changed within so many minutes of each other are changed in one go. Common practice, no source; less than the spare time a bowl has. */
const together = 15;
/** How long before its time hot food is put out, at most. Minutes; common practice, no source. */
const hotSooner = 5;

function freshOf(event: Event, menu: MenuPlan, cooking: CookingPlan): Fresh[] {
  return cooking.dishes.flatMap((made) => {
    const dish = menu.dishes.find((d) => d.id === made.dish);
    if (dish === undefined || event.menu.dishes.find((d) => d.id === made.dish)?.served.kind === 'fixed') return [];
    const isCold = made.bowls.length > 1;
    const servings = isCold ? made.bowls : made.cookings;
    // The first is put out with the tables, or with its meal.
    return servings.slice(1).map((s): Fresh => ({
      id: `serve/fresh/${dish.id}/${s.number}`, dish: dish.name, at: s.from, number: s.number, of: servings.length, isCold,
      amount: { amount: dish.portions.value === 0 ? '0' : dish.total.amount.times(s.portions).div(dish.portions.value).toFixed(4), unit: dish.total.unit },
    }));
  });
}

/** Putting out fresh bowls and what is freshly cooked, and taking the old away; cold bowls that are due together in one job. */
export function freshJobs(takes: DayValues, event: Event, menu: MenuPlan, cooking: CookingPlan): Job[] {
  const groups: Fresh[][] = [];
  for (const fresh of freshOf(event, menu, cooking).toSorted((a, b) => a.at - b.at)) {
    const group = groups.find((g) => g[0] !== undefined && (fresh.isCold && g[0].isCold ? fresh.at - g[0].at <= together : fresh.at === g[0].at));
    if (group === undefined) groups.push([fresh]);
    else group.push(fresh);
  }
  return groups.flatMap((group): Job[] => {
    const [first] = group;
    if (first === undefined) return [];
    const minutes = Math.max(1, Math.round(takes.freshBowl * group.length));
    // A bowl that is put out sooner stands longer: all of them may be out so much sooner as the plan of bowls keeps spare. What is hot comes when it is wanted.
    const sooner = first.isCold ? takes.serveSpare - (group.at(-1)?.at ?? first.at) + first.at : hotSooner;
    const bowls = group.map(({ dish, amount, number, of }) => ({ dish, amount, number, of }));
    return [{
      id: first.id, kind: 'serve', roles: ['runner', 'cook'], about: {}, after: [], towards: 'late', spare: 0, anyTime: false,
      stretches: [{ id: first.id, minutes, attention: 1, needs: [], name: { id: 'timeline.task.freshBowls', params: { bowls } } }],
      earliest: first.at - minutes - sooner, latest: first.at, notDoneBefore: first.at - sooner,
    }];
  });
}
