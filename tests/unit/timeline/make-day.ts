import { Big } from 'big.js';
import type { DrinksPlan } from '../../../shared/drinks';
import { eventSchema, type Event } from '../../../shared/event';
import { figure, type Figure } from '../../../shared/figure';
import type { FryingPlan } from '../../../shared/frying';
import { planGuests } from '../../../shared/guests';
import { minutes } from '../../../shared/measure';
import type { DishPlan } from '../../../shared/menu';
import type { DayInputs } from '../../../shared/timeline';

const number = (n: number): Figure => figure(n, '', () => ({ rule: 'timeline.busy', terms: [], sum: { op: 'number', value: n } }));

/** A step as tests write it. */
export interface TestStep {
  readonly id: string;
  readonly active?: number;
  readonly passive?: number;
  readonly passiveAttention?: number;
  readonly by?: string;
  readonly needs?: readonly { readonly thing: string; readonly count: number }[];
  readonly after?: readonly string[];
  readonly endsBefore?: { readonly earliest: number; readonly latest: number };
}
/** A dish as tests write it: weight in kg and first serving. */
export interface TestDish {
  readonly id: string;
  readonly kg?: number;
  readonly at: number;
  readonly steps: readonly TestStep[];
  readonly fried?: boolean;
}
/** A day as tests write it. */
export interface TestDay {
  readonly people: readonly { readonly id: string; readonly roles: readonly string[]; readonly from: number; readonly to: number }[];
  readonly burners?: number;
  readonly pots?: number;
  readonly counterPlaces?: number;
  readonly dishes?: readonly TestDish[];
  /** Fry stations, one pan each: batches as put-in times inside the session. */
  readonly stations?: readonly { readonly on: number; readonly ready: number; readonly off: number; readonly drops: readonly number[]; readonly cycle: number }[];
  readonly bowls?: readonly { readonly mixAt: number; readonly readyAt: number }[];
  readonly rounds?: readonly { readonly startAt: number; readonly readyAt: number }[];
  readonly fills?: readonly { readonly at: number; readonly trips: number }[];
}

/** The event of a test day. Burner k belongs to pan k; brew rounds use the last burner and the last pot. */
export function dayEvent(day: TestDay): Event {
  const stations = day.stations ?? [];
  const burners = Math.max(day.burners ?? 4, stations.length);
  return eventSchema.parse({
    format: 'brimful-event/1', id: 'day', title: 'Day', day: '2026-12-12', opensAt: 720, closesAt: 1080,
    guests: { waves: [{ id: 'w', name: 'All', from: 720, to: 780, counts: { adult: 40 }, stay: { shortest: 60, usual: 90, longest: 120 } }] },
    people: day.people.map((p) => ({ ...p, name: p.id })),
    kitchen: {
      counterPlaces: day.counterPlaces ?? 3,
      burners: Array.from({ length: burners }, (_, i) => ({ id: `b${i}`, name: `Burner ${i}`, kind: 'gas', ratedW: 3000 })),
      pots: Array.from({ length: day.pots ?? 3 }, (_, i) => ({ id: `p${i}`, name: `Pot ${i}`, litres: 10 })),
      pans: stations.map((_, i) => ({ id: `pan${i}`, name: `Pan ${i}`, shape: 'round', rimMm: 380, depthMm: 110, oilLitres: 3, burner: `b${i}` })),
      stations: stations.map((_, i) => ({ id: `s${i}`, name: `Station ${i}`, pans: [`pan${i}`], dishes: [] })),
    },
    recipes: (day.dishes ?? []).map((d) => ({
      id: d.id, name: d.id, role: d.fried === true ? 'friedSnack' : 'grain', yield: { amount: { amount: '1', unit: 'kg' }, portions: 4 },
      ingredients: [{ ingredient: 'rice', amount: { amount: '1', unit: 'kg' } }],
      frying: d.fried === true ? { pieceBatterG: 25, fryMinutes: 4 } : undefined,
      steps: d.steps.map((s) => ({
        id: s.id, name: s.id, does: 'prepare', active: { fixed: s.active ?? 0 }, passive: { fixed: s.passive ?? 0 }, passiveAttention: s.passiveAttention ?? 0,
        by: s.by, needs: s.needs, after: s.after, endsBefore: s.endsBefore,
      })),
    })),
    menu: { dishes: (day.dishes ?? []).map((d) => ({ id: d.id, recipe: d.id })) },
  });
}

function fryingOf(day: TestDay): FryingPlan {
  const batches = (day.stations ?? []).flatMap((s, i) => s.drops.map((drop) => ({ drop, cycle: s.cycle, i })))
    .toSorted((a, b) => a.drop - b.drop || a.i - b.i)
    .map((b, k) => ({
      number: k + 1, station: `s${b.i}`, pan: `pan${b.i}`, dish: day.dishes?.[0]?.id ?? 'none', bowls: [], dropAt: minutes(b.drop), liftAt: minutes(b.drop + b.cycle - 1),
      panFreeAt: minutes(b.drop + b.cycle), eatBy: minutes(b.drop + 30), pieces: 10, wave: 'w', eatenFrom: minutes(b.drop + b.cycle), eatenTo: minutes(b.drop + 20),
    }));
  return {
    loads: [], served: [], shortages: [], leads: [], oil: [], waits: [], pauses: [], oilEnds: [], care: [], batchBound: number(batches.length), unmetBound: null, problems: [], batches,
    bowls: (day.bowls ?? []).map((b, k) => ({ number: k + 1, dish: 'other', station: 's0', mixAt: minutes(b.mixAt), readyAt: minutes(b.readyAt), useBy: minutes(b.readyAt + 20), batterKg: 1, pieces: 40, lines: [] })),
    sessions: (day.stations ?? []).map((s, i) => ({ station: `s${i}`, pan: `pan${i}`, heatOnAt: minutes(s.on), readyAt: minutes(s.ready), heatOffAt: minutes(s.off) })),
    fillLitres: number(0), uptakeLitres: number(0), buyLitres: number(0), batchCount: number(batches.length), bowlCount: number(0), batterKg: number(0), pieces: number(0),
  };
}

function drinksOf(day: TestDay, event: Event): DrinksPlan {
  const [pot, burner] = [event.kitchen.pots.at(-1)?.id ?? 'none', event.kitchen.burners.at(-1)?.id ?? null];
  return {
    dispensers: [], totals: [], unbrewed: [], advice: [], ice: null, problems: [],
    rounds: (day.rounds ?? []).map((r, k) => ({
      number: k + 1, drink: 'tea', pot, burner, inUrn: false, startAt: minutes(r.startAt), boilAt: minutes((r.startAt + r.readyAt) / 2), readyAt: minutes(r.readyAt), startHands: 5, finishHands: 5, apart: [], madeAhead: false, note: null,
      litres: 5, waterLitres: number(5), heatMinutes: number(20), ingredients: [],
    })),
    fills: (day.fills ?? []).map((f) => ({ dispenser: 'urn', at: minutes(f.at), litres: 5, round: 1, leftLitres: 0, trips: f.trips })),
  };
}

/** Everything the day is planned from, with dishes, frying and drinks as the test wrote them. */
export function inputsOf(day: TestDay, event: Event): DayInputs {
  const dishes = (day.dishes ?? []).map((d): DishPlan => {
    const recipe = event.recipes.find((r) => r.id === d.id)!;
    return {
      id: d.id, name: d.id, recipe, role: recipe.role, servedAs: 'portion', perAdult: number(1),
      perBand: { under1: 0, age1to3: 0, age4to6: 0, age7to9: 0, age10to12: 0, age13to17: 0, adult: 1, olderAdult: 1 },
      portions: number(40), total: { amount: new Big(d.kg ?? 1), unit: 'kg' }, totalFigure: number(1), demand: { fromMinute: minutes(d.at), values: [40] },
      byWave: [], factor: d.kg ?? 1, lines: [], allergens: [], diets: [], firstServed: d.at, lastServed: d.at + 60,
    };
  });
  return {
    guests: planGuests(event), menu: { dishes, diets: [], allergies: [] }, buying: { lines: [], sections: [], cost: null, costFigure: null, unpriced: 0, shoppers: [], ownThings: [], borrowed: [], unknown: [], notCounted: [] },
    kitchen: { pans: [], burners: [] }, frying: fryingOf(day), drinks: drinksOf(day, event), cooking: { dishes: [], notes: [] },
  };
}
