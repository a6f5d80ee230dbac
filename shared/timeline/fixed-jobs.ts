import type { BrewRound, DrinksPlan, Fill } from '../drinks';
import type { Bowl, FryingPlan } from '../frying';
import type { MenuPlan } from '../menu';
import type { Message } from '../words';
import { fixedJob, type Job } from './job';

const nameOf = (menu: MenuPlan, dish: string): string => menu.dishes.find((d) => d.id === dish)?.name ?? dish;

/** Mixing the bowls of batter, at the times of the frying plan. `handsOn`: share of a person that work with the hands takes. */
export const bowlJobs = (menu: MenuPlan, frying: FryingPlan, handsOn: number): Job[] => frying.bowls.filter((b) => b.readyAt > b.mixAt).map((b: Bowl) => fixedJob({
  id: `bowl/${b.number}`, kind: 'bowl', roles: ['cook', 'runner'], about: { dish: b.dish, station: b.station, bowl: b.number },
  name: { id: 'timeline.task.bowl', params: { bowl: b.number, dish: nameOf(menu, b.dish) } },
  start: b.mixAt, end: b.readyAt, attention: handsOn, needs: [{ thing: 'counter', count: 1 }],
}));

/** Minute at which the pot leaves the burner: after the boil and what the recipe keeps it boiling. Steeping and cooling need no burner. */
function offHeatAt(menu: MenuPlan, r: BrewRound): number {
  const brewing = menu.dishes.find((d) => d.id === r.drink)?.recipe.brewing;
  return r.burner === null ? r.startAt : Math.min(r.readyAt, Math.ceil(r.boilAt + (brewing?.boilMinutes ?? 0)));
}

/**
 * Minutes by which a fill may be later than the drinks plan has it: it is planned so long before the vessel runs dry or the doors open, and the
 * first trip must be there by then.
 */
export const fillRoom = (leadMinutes: number, tripMinutes: number): number => Math.max(0, leadMinutes - tripMinutes);

/** Brewing: hands on at the start, the pot by itself on and then off its burner, hands on at the end; the minutes of hands are the drinks plan's. A round may begin later by as long as it would stand before it is poured, and `room` minutes more. */
export function brewJobs(menu: MenuPlan, drinks: DrinksPlan, handsOn: number, room = 0): Job[] {
  const pouredAt = new Map<number, number>();
  for (const f of drinks.fills) pouredAt.set(f.round, Math.min(pouredAt.get(f.round) ?? f.at, f.at));
  return drinks.rounds.flatMap((r: BrewRound) => {
    const length = r.readyAt - r.startAt;
    if (length <= 0) return [];
    const begun = r.startAt + r.startHands;
    const finish = r.readyAt - r.finishHands;
    const whole = begun >= r.readyAt;
    // A round may be made later than planned, but before it is poured.
    const waits = Math.max(0, (pouredAt.get(r.number) ?? r.readyAt) - r.readyAt) + (pouredAt.has(r.number) ? room : 0);
    const offHeat = offHeatAt(menu, r);
    const params = { round: r.number, drink: nameOf(menu, r.drink) };
    const id = `brew/${r.number}`;
    const part = (partId: string, name: Message, start: number, end: number, attention: number, after: readonly string[]): Job[] => {
      if (end <= start) return [];
      const burner = r.burner !== null && start < offHeat - 1e-9 ? [{ thing: `burner:${r.burner}`, count: 1 }] : [];
      return [fixedJob({ id: partId, kind: 'brew', roles: ['tea'], about: { dish: r.drink, round: r.number }, name, start, end, attention, needs: r.inUrn ? [{ thing: `urn:${r.pot}`, count: 1 }] : [{ thing: `pot:${r.pot}`, count: 1 }, ...burner], after, slide: waits })];
    };
    if (whole) return part(id, { id: r.madeAhead ? 'timeline.task.pourAhead' : 'timeline.task.brewShort', params }, r.startAt, r.readyAt, handsOn, []);
    const turn = Math.min(finish, Math.max(begun, offHeat));
    return [
      ...part(id, { id: 'timeline.task.brewStart', params }, r.startAt, begun, handsOn, []),
      ...part(`${id}/by-itself`, { id: 'timeline.task.brewHeat', params }, begun, turn, 0, [id]),
      ...part(`${id}/off-heat`, { id: 'timeline.task.brewStand', params }, turn, finish, 0, [turn > begun ? `${id}/by-itself` : id]),
      ...part(`${id}/finish`, { id: 'timeline.task.brewEnd', params }, finish, r.readyAt, handsOn, [finish > turn ? `${id}/off-heat` : turn > begun ? `${id}/by-itself` : id]),
    ];
  });
}

/** Filling dispensers at the minute of the drinks plan, or by at most `room` minutes later where hands are short; a settled number of minutes for each trip. */
export function fillJobs(drinks: DrinksPlan, tripMinutes: number, room = 0): Job[] {
  const seen = new Map<string, number>();
  return drinks.fills.flatMap((f: Fill) => {
    const nth = (seen.get(f.dispenser) ?? 0) + 1;
    seen.set(f.dispenser, nth);
    if (f.trips === 0) return [];
    const dispenser = drinks.dispensers.find((d) => d.id === f.dispenser)?.name ?? f.dispenser;
    return [fixedJob({
      id: `fill/${f.dispenser}/${nth}`, kind: 'fill', roles: ['tea', 'runner'], about: { round: f.round },
      name: { id: 'timeline.task.fill', params: { dispenser, litres: f.litres, round: f.round } },
      start: f.at, end: f.at + tripMinutes * f.trips, attention: 1, needs: [], slide: room, after: [`brew/${f.round}`, `brew/${f.round}/finish`],
    })];
  });
}
