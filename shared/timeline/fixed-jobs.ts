import type { BrewRound, DrinksPlan, Fill } from '../drinks';
import type { Bowl, FryingPlan } from '../frying';
import type { MenuPlan } from '../menu';
import { fixedJob, type Job } from './job';

/** Minutes somebody is busy at the start and at the end of a brew round (common practice, no source). */
const startMinutes = 5;
const strainMinutes = 5;
/** Minutes for each trip to a dispenser (common practice, no source); a fill may wait a little for free hands. */
const tripMinutes = 3;
const fillWaits = 10;

const nameOf = (menu: MenuPlan, dish: string): string => menu.dishes.find((d) => d.id === dish)?.name ?? dish;

/** Mixing the bowls of batter, at the times of the frying plan. */
export const bowlJobs = (menu: MenuPlan, frying: FryingPlan): Job[] => frying.bowls.filter((b) => b.readyAt > b.mixAt).map((b: Bowl) => fixedJob({
  id: `bowl/${b.number}`, kind: 'bowl', roles: ['cook', 'runner'], about: { dish: b.dish, station: b.station, bowl: b.number },
  name: { id: 'timeline.task.bowl', params: { bowl: b.number, dish: nameOf(menu, b.dish) } },
  start: b.mixAt, end: b.readyAt, attention: 1, needs: [{ thing: 'counter', count: 1 }],
}));

/** Brewing: hands on at the start, the pot by itself on its burner, hands on at the end. */
export function brewJobs(menu: MenuPlan, drinks: DrinksPlan): Job[] {
  return drinks.rounds.flatMap((r: BrewRound) => {
    const length = r.readyAt - r.startAt;
    if (length <= 0) return [];
    const begin = Math.min(startMinutes, length / 3);
    const end = Math.min(strainMinutes, length / 3);
    const params = { round: r.number, drink: nameOf(menu, r.drink) };
    const needs = [{ thing: `pot:${r.pot}`, count: 1 }, ...(r.burner === null ? [] : [{ thing: `burner:${r.burner}`, count: 1 }])];
    const base = { kind: 'brew' as const, roles: ['tea'], about: { dish: r.drink, round: r.number }, needs };
    const id = `brew/${r.number}`;
    return [
      fixedJob({ ...base, id, name: { id: 'timeline.task.brewStart', params }, start: r.startAt, end: r.startAt + begin, attention: 1 }),
      fixedJob({ ...base, id: `${id}/by-itself`, name: { id: 'timeline.task.brewHeat', params }, start: r.startAt + begin, end: r.readyAt - end, attention: 0, after: [id] }),
      fixedJob({ ...base, id: `${id}/finish`, name: { id: 'timeline.task.brewEnd', params }, start: r.readyAt - end, end: r.readyAt, attention: 1, after: [`${id}/by-itself`] }),
    ];
  });
}

/** Filling dispensers. */
export function fillJobs(drinks: DrinksPlan): Job[] {
  const seen = new Map<string, number>();
  return drinks.fills.map((f: Fill) => {
    const nth = (seen.get(f.dispenser) ?? 0) + 1;
    seen.set(f.dispenser, nth);
    const dispenser = drinks.dispensers.find((d) => d.id === f.dispenser)?.name ?? f.dispenser;
    return fixedJob({
      id: `fill/${f.dispenser}/${nth}`, kind: 'fill', roles: ['tea', 'runner'], about: { round: f.round },
      name: { id: 'timeline.task.fill', params: { dispenser, litres: f.litres, round: f.round } },
      start: f.at, end: f.at + tripMinutes * Math.max(1, f.trips), attention: 1, needs: [], slide: fillWaits,
    });
  });
}
