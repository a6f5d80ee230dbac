import type { Event, Frying, Pan, Recipe } from '../event';
import type { DishPlan } from '../menu';
import type { Message } from '../words';
import { servesWaiting, type DishPart } from './dish-parts';
import { strongerBy } from './remedy';

/** Portions nobody gets, by dish, planned from the event alone: guests, menu, pans, batches. */
export type Replan = (event: Event) => ReadonlyMap<string, number>;

/** A change, said as a cook would do it. `event` = how the event reads with it, planned again from the guests to the batches. */
interface Try {
  readonly event: Event;
  readonly message: Message;
}

/** Guests are not asked to wait longer than this, minutes. */
const longestWait = 60;
/** Take-up and holds are tried in these steps: finer ones nobody can keep. */
const steps = { hold: [5, 10, 15, 20], litres: [0.5, 1, 1.5, 2, 3], watts: [1000, 2000, 3000, 4000, 6000], pans: [1, 2, 3, 4], takeUp: [0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.65, 0.6, 0.5, 0.4, 0.3] } as const;

/**
 * Of each kind of change the smallest that serves everybody without anybody else going short: another pan, more oil, a stronger burner, a
 * longer hold (with it an earlier start), fewer who take it; and the shortest that guests would have to wait. Each is planned again, from the
 * guests to the batches; what does not serve everybody is not said.
 */
export function shortageRemedies(event: Event, dish: DishPlan, frying: Frying, parts: readonly DishPart[], wanted: readonly number[], replan: Replan): Message[] {
  const before = replan(event);
  const ladders = [morePans, moreOil, strongerBurner, longerHold, smallerTakeUp].map((ladder) => ladder(event, dish, frying, parts));
  const found = ladders.flatMap((ladder) => {
    const works = ladder.find((one) => serves(replan(one.event), dish.id, before));
    return works === undefined ? [] : [works.message];
  });
  const wait = shortestWait(event, frying, parts, wanted);
  return wait === null ? found : [...found, { id: 'frying.shortage.wait', params: { minutes: wait } }];
}

const serves = (unmet: ReadonlyMap<string, number>, dish: string, before: ReadonlyMap<string, number>): boolean =>
  [...unmet].every(([id, n]) => (id === dish ? n === 0 : n <= (before.get(id) ?? 0)));

function morePans(event: Event, _: DishPlan, __: Frying, parts: readonly DishPart[]): Try[] {
  const part = parts[0];
  const like = part?.line.pans[0];
  if (part === undefined || like === undefined) return [];
  return steps.pans.map((pans) => {
    const more = Array.from({ length: pans }, (_unused, i) => ({ pan: freshId(event, `${like.pan.id}-more-${i + 1}`), burner: freshId(event, `${like.pan.burner}-more-${i + 1}`) }));
    const { kitchen } = event;
    return {
      message: { id: 'frying.shortage.pans', params: { pans, station: part.line.station.name } },
      event: {
        ...event,
        kitchen: {
          ...kitchen, pans: [...kitchen.pans, ...more.map((m) => ({ ...like.pan, id: m.pan, burner: m.burner }))], burners: [...kitchen.burners, ...more.map((m) => ({ ...like.burner.burner, id: m.burner }))],
          stations: kitchen.stations.map((s) => (s.id === part.line.station.id ? { ...s, pans: [...s.pans, ...more.map((m) => m.pan)] } : s)),
        },
      },
    };
  });
}

const freshId = (event: Event, wish: string): string => {
  const taken = new Set([...event.kitchen.pans, ...event.kitchen.burners].map((x) => x.id));
  let id = wish.slice(-60);
  while (taken.has(id)) id = `x${id}`.slice(0, 64);
  return id;
};

const pansOf = (parts: readonly DishPart[]): ReadonlySet<string> => new Set(parts.flatMap((p) => p.line.pans.map((s) => s.pan.id)));

function moreOil(event: Event, _: DishPlan, __: Frying, parts: readonly DishPart[]): Try[] {
  const mine = pansOf(parts);
  const fuller = (p: Pan, litres: number): Pan => (mine.has(p.id) ? { ...p, oilLitres: p.oilLitres + litres } : p);
  return steps.litres.map((litres) => ({
    message: { id: 'frying.shortage.oil', params: { litres } }, event: { ...event, kitchen: { ...event.kitchen, pans: event.kitchen.pans.map((p) => fuller(p, litres)) } },
  }));
}

function strongerBurner(event: Event, _: DishPlan, __: Frying, parts: readonly DishPart[]): Try[] {
  const mine = new Set(parts.flatMap((p) => p.line.pans.map((s) => s.pan.burner)));
  return steps.watts.map((watts) => ({
    message: { id: 'frying.shortage.burner', params: { watts } },
    event: { ...event, kitchen: { ...event.kitchen, burners: event.kitchen.burners.map((b) => (mine.has(b.id) ? strongerBy(b, watts) : b)) } },
  }));
}

function longerHold(event: Event, dish: DishPlan, frying: Frying): Try[] {
  const held = (r: Recipe, more: number): Recipe => (r.id === dish.recipe.id ? { ...r, frying: { ...frying, holdMinutes: frying.holdMinutes + more } } : r);
  return steps.hold.map((more) => ({
    message: { id: 'frying.shortage.hold', params: { minutes: Math.floor(frying.holdMinutes) + more } }, event: { ...event, recipes: event.recipes.map((r) => held(r, more)) },
  }));
}

function smallerTakeUp(event: Event, dish: DishPlan): Try[] {
  const now = event.menu.dishes.find((d) => d.id === dish.id)?.takeUp ?? 1;
  return steps.takeUp.map((share) => ({
    message: { id: 'frying.shortage.takeUp', params: { percent: Math.round(share * now * 100), now: Math.round(now * 100) } },
    event: { ...event, menu: { ...event.menu, dishes: event.menu.dishes.map((d) => (d.id === dish.id ? { ...d, takeUp: Math.round(share * now * 100) / 100 } : d)) } },
  }));
}

/** Fewest whole minutes with which everybody is served when each waits at most so long for theirs; null when even an hour is not enough. A longer wait never makes it harder, so halving finds it. */
function shortestWait(event: Event, frying: Frying, parts: readonly DishPart[], wanted: readonly number[]): number | null {
  const enough = (guestsWait: number): boolean => servesWaiting(event, frying, parts, wanted, guestsWait);
  if (!enough(longestWait)) return null;
  let [low, high] = [0, longestWait];
  while (high - low > 1) {
    const mid = (low + high) >> 1;
    if (enough(mid)) high = mid;
    else low = mid;
  }
  return high;
}
