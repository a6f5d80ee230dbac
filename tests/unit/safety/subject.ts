import { bandIds, eventSchema, recipeSchema, type BandId, type Event, type Recipe } from '../../../shared/event';
import { figure, just, type Figure } from '../../../shared/figure';
import { amountOf, celsius, minutes, type Minutes } from '../../../shared/measure';
import type { Batch, FryingPlan } from '../../../shared/frying';
import type { DispenserPlan } from '../../../shared/drinks';
import type { DishPlan } from '../../../shared/menu';
import { planSafety, type Finding, type SafetyInput, type SafetyPlan } from '../../../shared/safety';
import type { Task } from '../../../shared/timeline';

/** A figure without a story, for plans made by hand. */
export const fig = (value: number, unit = ''): Figure =>
  figure(value, unit, () => ({ rule: 'test', terms: [{ key: 'x', label: { text: 'x' }, value, unit, origin: { kind: 'definition' } }], sum: just('x') }));

const everyBand = (value: (b: BandId) => number): Record<BandId, number> => ({
  under1: value('under1'), age1to3: value('age1to3'), age4to6: value('age4to6'), age7to9: value('age7to9'),
  age10to12: value('age10to12'), age13to17: value('age13to17'), adult: value('adult'), olderAdult: value('olderAdult'),
});

/** A recipe from its ingredients and whatever else matters. */
export const recipe = (id: string, ingredients: readonly string[], rest: Readonly<Record<string, unknown>> = {}): Recipe => recipeSchema.parse({
  id, name: `Dish ${id}`, role: 'grain', yield: { amount: { amount: '1', unit: 'kg' }, portions: 8 },
  ingredients: ingredients.map((i) => { const [ingredient, grams = '100'] = i.split(' '); return { ingredient, amount: { amount: grams, unit: 'g' } }; }), ...rest,
});

/** A dish of a recipe, served from 12:00 to `lastServed`. */
export const dish = (r: Recipe, rest: Partial<DishPlan> = {}): DishPlan => ({
  id: r.id, name: r.name, recipe: r, role: r.role, servedAs: 'portion', perAdult: fig(1), perBand: everyBand((b) => (b === 'adult' ? 1 : 0)), portions: fig(10),
  total: amountOf('1', 'kg'), totalFigure: fig(1, 'kg'), demand: { fromMinute: minutes(720), values: [10] }, byWave: [], factor: 1, lines: [],
  allergens: [], diets: [], firstServed: 720, lastServed: 780, ...rest,
});

/** A task of the day. */
export const task = (id: string, kind: Task['kind'], start: number, end: number, rest: Partial<Task> = {}): Task =>
  ({ id, kind, name: { id: 'safety.guidance' }, start: minutes(start), end: minutes(end), who: [], attention: 1, needs: [], after: [], slack: 0, ...rest });

/** A batch of frying eaten so many minutes after it was lifted. */
export const batch = (number: number, dishId: string, eatenAfter: number): Batch => {
  const lift: Minutes = minutes(724);
  return { number, station: 'a', pan: 'pan', dish: dishId, bowls: [], dropAt: minutes(720), liftAt: lift, panFreeAt: minutes(725), eatBy: minutes(744), pieces: 20, wave: 'w', eatenFrom: lift, eatenTo: minutes(lift + eatenAfter) };
};

/** A flask with the same drink at these temperatures, minute by minute from noon. */
export const flask = (drink: string, temperatures: readonly number[]): DispenserPlan => ({
  id: `${drink}-flask`, name: 'Flask', drink, capacityLitres: 5, fromMinute: minutes(720), litres: temperatures.map(() => 3), celsius: temperatures.map((t) => celsius(t)), coolingPerHour: fig(0.04),
});

/** What a test says about the event and its plans; the rest is empty. */
export interface Given {
  readonly event?: Readonly<Record<string, unknown>>;
  readonly dishes?: readonly DishPlan[];
  readonly holding?: Readonly<Record<string, { readonly place: string; readonly temperatureC?: number }>>;
  readonly frying?: Partial<FryingPlan>;
  readonly tasks?: readonly Task[];
  readonly dispensers?: readonly DispenserPlan[];
  readonly rounds?: SafetyInput['drinks']['rounds'];
  readonly fills?: SafetyInput['drinks']['fills'];
  readonly allergies?: SafetyInput['menu']['allergies'];
  readonly pans?: SafetyInput['kitchen']['pans'];
  readonly counts?: Partial<Record<BandId, number>>;
  readonly gas?: SafetyInput['day']['gas'];
}

const noFrying: FryingPlan = {
  loads: [], batches: [], bowls: [], served: [], shortages: [], leads: [], sessions: [], oil: [], waits: [], pauses: [], oilEnds: [], care: [], batchBound: fig(0), unmetBound: null, fillLitres: fig(0), uptakeLitres: fig(0), buyLitres: fig(0),
  batchCount: fig(0), bowlCount: fig(0), batterKg: fig(0), pieces: fig(0), problems: [],
};

const eventOf = (g: Given): Event => {
  const dishes = g.dishes ?? [];
  return eventSchema.parse({
    format: 'brimful-event/1', id: 'e', title: 'Test', day: '2026-12-12', opensAt: 660, closesAt: 1140,
    menu: { dishes: dishes.map((d) => ({ id: d.id, recipe: d.recipe.id, ...(g.holding?.[d.id] === undefined ? {} : { holding: g.holding[d.id] }) })) },
    recipes: dishes.map((d) => d.recipe), ...g.event,
  });
};

/** Judges what a test says. */
export function judge(g: Given): SafetyPlan {
  const series = { fromMinute: minutes(720), values: [] };
  const counts = everyBand((b) => g.counts?.[b] ?? 0);
  const wave = { id: 'w', name: 'Wave', from: minutes(720), to: minutes(750), counts, adults: counts.adult, children: 0, expected: counts, planned: counts, coming: fig(counts.adult), turnout: { invited: counts.adult, expected: counts.adult, share: 1, range: null, scale: 1, guess: null, uncertain: false }, stay: { shortest: 30, usual: 60, longest: 90, mean: 60 } };
  return planSafety(eventOf(g), {
    guests: { adults: fig(0), children: fig(0), planned: fig(0), waves: bandIds.some((b) => counts[b] > 0) ? [wave] : [], presence: { fromMinute: minutes(720), expected: [], p10: [], p90: [], planning: [] }, arrivals: series, departures: series, peak: fig(0), peakAt: minutes(720) },
    menu: { dishes: g.dishes ?? [], diets: [], allergies: g.allergies ?? [] },
    buying: { lines: [], sections: [], cost: null, costFigure: null, unpriced: 0, shoppers: [], ownThings: [], borrowed: [], unknown: [], notCounted: [] },
    kitchen: { pans: g.pans ?? [], burners: [] }, cooking: { dishes: [], notes: [] },
    frying: { ...noFrying, ...g.frying },
    drinks: { rounds: g.rounds ?? [], fills: g.fills ?? [], dispensers: g.dispensers ?? [], totals: [], unbrewed: [], advice: [], ice: null, problems: [] },
    day: { tasks: g.tasks ?? [], overloads: [], notes: [], critical: [], busy: [], gas: g.gas ?? [], gasNeed: null, off: [] },
  });
}

/** Findings of one rule. */
export const found = (plan: SafetyPlan, rule: string): readonly Finding[] => plan.findings.filter((f) => f.rule === rule);
/** How a rule stands: `found`, `in order`, or `needs` an input. */
export function stands(plan: SafetyPlan, rule: string): string {
  if (found(plan, rule).length > 0) return 'found';
  if (plan.inOrder.includes(rule)) return 'in order';
  return plan.notChecked.some((n) => n.rule === rule && !n.notYet) ? 'needs' : 'not yet';
}
