import { eventSchema, type Event } from '../../../shared/event';
import { figure, just, type Figure } from '../../../shared/figure';
import { amountOf, minutes } from '../../../shared/measure';
import type { Batch, Bowl, FryingPlan, LoadPlan } from '../../../shared/frying';
import type { DishPlan } from '../../../shared/menu';
import type { Plan } from '../../../shared/plan';
import type { Task } from '../../../shared/timeline';

/** A plan made by hand, so that the sheets are tested for what they say and not for what the rooms below compute. */
const fig = (value: number, unit: string): Figure =>
  figure(value, unit, () => ({ rule: 'frying.batchCount', terms: [{ key: 'x', label: { text: 'x' }, value, unit, origin: { kind: 'definition' } }], sum: just('x') }));

const counts = { adult: 68, age4to6: 21 };
const stay = { shortest: 60, usual: 90, longest: 150 };

export const lanternEvent = (changes: Record<string, unknown> = {}): Event => eventSchema.parse({
  format: 'brimful-event/1', id: 'lantern', title: 'Lantern Evening', day: '2026-12-12', opensAt: 660, closesAt: 1140,
  guests: { waves: [{ id: 'early', name: 'Early', from: 660, to: 720, counts, stay }], allergies: [{ allergen: 'nuts', people: 2 }] },
  menu: { dishes: [{ id: 'fritters', recipe: 'fritters' }, { id: 'tea', recipe: 'tea' }] },
  recipes: [
    { id: 'fritters', name: 'Spring-onion and spinach fritters', role: 'friedSnack', yield: { amount: { amount: '20', unit: 'piece' }, portions: 20 },
      ingredients: [{ ingredient: 'chickpea-flour', amount: { amount: '250', unit: 'g' } }, { ingredient: 'baking-soda', amount: { amount: '2', unit: 'g' }, perBowl: true }],
      steps: [{ id: 'chop', name: 'Chop the greens', does: 'prepare', keeps: { place: 'cold', minutes: 1440 } }],
      frying: { pieceBatterG: 25, fryMinutes: 4 } },
    { id: 'tea', name: 'Ginger tea', role: 'hotDrink', yield: { amount: { amount: '1', unit: 'L' }, portions: 6 }, ingredients: [{ ingredient: 'black-tea', amount: { amount: '12', unit: 'g' } }],
      brewing: { method: 'infuse', hot: true, cupMl: 150 } },
  ],
  kitchen: {
    pans: [{ id: 'wok', name: 'Wide wok', shape: 'flatWok', rimMm: 380, depthMm: 110, oilLitres: 3, burner: 'ring' }],
    burners: [{ id: 'ring', name: 'Gas ring', kind: 'gas', ratedW: 5000 }],
    pots: [{ id: 'big', name: 'Big pot', litres: 10 }],
    dispensers: [{ id: 'flask', name: 'Tea flask', litres: 6, insulation: 'vacuum', dish: 'tea' }],
    stations: [{ id: 'stove', name: 'Stove', pans: ['wok'], dishes: ['fritters'] }],
  },
  people: [{ id: 'fryer', name: 'Fryer', roles: ['fryer'], from: 600, to: 1140, liftKg: 12 }, { id: 'tea-maker', name: 'Tea', roles: ['tea'], from: 600, to: 1140 }],
  ...changes,
});

function dish(event: Event, id: string, servedAs: DishPlan['servedAs'], unit: 'piece' | 'L', total: number): DishPlan {
  const recipe = event.recipes.find((r) => r.id === id)!;
  return {
    id, name: recipe.name, recipe, role: recipe.role, servedAs, perAdult: fig(4, 'pieces'),
    perBand: { under1: 0, age1to3: 2, age4to6: 2, age7to9: 2, age10to12: 2, age13to17: 4, adult: 4, olderAdult: 4 },
    portions: fig(total, 'pieces'), total: amountOf(total, unit), totalFigure: fig(total, unit), demand: { fromMinute: minutes(660), values: [total] },
    byWave: [{ wave: 'early', portions: total }], factor: 10, allergens: ['gluten'], diets: ['vegan'], firstServed: 660, lastServed: 800,
    lines: recipe.ingredients.map((line) => ({ ingredient: line.ingredient, amount: amountOf(line.amount.amount, line.amount.unit), perBowl: line.perBowl, toTaste: false, preparation: 'sifted' })),
  };
}

/** `count` batches of 19, five to a bowl, five minutes apart from 11:08. */
export function fried(event: Event, count: number): Pick<FryingPlan, 'batches' | 'bowls'> {
  const lines = dish(event, 'fritters', 'piece', 'piece', 300).lines;
  const batches: Batch[] = Array.from({ length: count }, (_, i) => ({
    number: i + 1, station: 'stove', pan: 'wok', dish: 'fritters', bowls: [Math.floor(i / 5) + 1], dropAt: minutes(668 + 5 * i), liftAt: minutes(672 + 5 * i),
    panFreeAt: minutes(673 + 5 * i), eatBy: minutes(692 + 5 * i), pieces: 19, wave: 'early', eatenFrom: minutes(673 + 5 * i), eatenTo: minutes(690 + 5 * i),
  }));
  const bowls: Bowl[] = Array.from({ length: Math.ceil(count / 5) }, (_, i) => ({
    number: i + 1, dish: 'fritters', station: 'stove', mixAt: minutes(655 + 25 * i), readyAt: minutes(660 + 25 * i), useBy: minutes(695 + 25 * i), batterKg: 2.375, pieces: 95, lines,
  }));
  return { batches, bowls };
}

const task = (id: string, kind: Task['kind'], start: number, end: number, more: Partial<Task> = {}): Task => ({
  id, kind, name: { id: 'sheets.kind.fry' }, start: minutes(start), end: minutes(end), who: ['fryer'], attention: 1, needs: [], after: [], slack: 10, ...more,
});

/** A line nobody has marked, priced or given to a shopper. */
const unmarked = (key: string) => ({
  key, kind: 'food' as const, bought: amountOf(0, 'g'), buyFigure: fig(1, 'kg'), state: key === 'water' ? 'house' as const : 'open' as const, note: null,
  price: { price: null, per: amountOf(1, 'kg') }, when: null, shopper: null,
});

/** The plan: `batches` of frying, `jobs` more jobs of the fryer on the day. */
export function lanternPlan(options: { readonly batches?: number; readonly jobs?: number; readonly event?: Record<string, unknown> } = {}): Plan {
  const event = lanternEvent(options.event);
  const load: LoadPlan = {
    station: 'stove', pan: 'wok', dish: 'fritters', pieces: fig(19, 'pieces'), limitedBy: 'space',
    limits: { space: fig(19, 'pieces'), dip: fig(24, 'pieces'), heat: fig(31, 'pieces'), oilRatio: fig(26, 'pieces'), rim: fig(40, 'pieces') },
    fryMinutes: 4, recipeMinutes: 4, cycleMinutes: fig(5, 'min'), dipC: fig(15, 'K'), kgPerHour: fig(5.7, 'kg/h'), remedy: null, remedies: [],
  };
  const batchCount = options.batches ?? 24;
  const jobs = Array.from({ length: options.jobs ?? 0 }, (_, i) => task(`job-${i}`, 'serve', 700 + 5 * i, 704 + 5 * i));
  return {
    event,
    guests: {
      adults: fig(68, 'people'), children: fig(21, 'people'), planned: fig(89, 'people'), peak: fig(60, 'people'), peakAt: minutes(720),
      waves: [{ id: 'early', name: 'Early', from: minutes(660), to: minutes(720), counts: event.guests.waves[0]!.counts, adults: 68, children: 21, expected: event.guests.waves[0]!.counts, planned: event.guests.waves[0]!.counts, coming: fig(89, 'people'), turnout: { invited: 89, expected: 89, share: 1, range: null, scale: 1, guess: null, uncertain: false }, stay: { ...stay, mean: 100 } }],
      presence: { fromMinute: minutes(660), expected: [], p10: [], p90: [], planning: [] }, arrivals: { fromMinute: minutes(660), values: [] }, departures: { fromMinute: minutes(660), values: [] },
    },
    cooking: { dishes: [], notes: [] },
    menu: { dishes: [dish(event, 'fritters', 'piece', 'piece', 300), dish(event, 'tea', 'cup', 'L', 12)], diets: [], allergies: [{ allergen: 'nuts', people: 2, containing: ['fritters'], open: ['tea'] }] },
    buying: {
      sections: ['flour-grain', 'tea-coffee', 'tap'], cost: '7.40', costFigure: fig(7.4, 'money'), unpriced: 1, shoppers: [], ownThings: [], borrowed: [], unknown: [], notCounted: [],
      lines: [
        { ...unmarked('chickpea-flour'), ingredient: 'chickpea-flour', name: 'Chickpea flour', section: 'flour-grain', need: amountOf('3.6', 'kg'), needFigure: fig(3.6, 'kg'), origins: [{ dish: 'fritters', amount: amountOf('3.6', 'kg') }], larder: amountOf('0.5', 'kg'), buy: amountOf('4', 'kg'), packs: [{ count: 2, size: amountOf('2', 'kg') }], cost: '7.40', keepsDays: null, optional: false },
        { ...unmarked('spinach'), ingredient: 'spinach', name: 'Spinach', section: 'flour-grain', need: amountOf('900', 'g'), needFigure: fig(900, 'g'), origins: [{ dish: 'fritters', amount: amountOf('900', 'g') }], larder: amountOf('0', 'g'), buy: amountOf('1000', 'g'), packs: [{ count: 5, size: amountOf('200', 'g') }], keepsDays: 2, optional: false },
        { ...unmarked('water'), ingredient: 'water', name: 'Water', section: 'tap', need: amountOf('12', 'L'), needFigure: fig(12, 'L'), origins: [{ dish: 'tea', amount: amountOf('12', 'L') }], larder: amountOf('0', 'L'), buy: amountOf('0', 'L'), packs: [], keepsDays: null, optional: false },
      ],
    },
    kitchen: { pans: [], burners: [] },
    frying: {
      ...fried(event, batchCount), loads: [load], served: [], shortages: [], leads: [], waits: [], pauses: [], oilEnds: [], care: [], batchBound: fig(batchCount, 'batches'), unmetBound: null, sessions: [{ station: 'stove', pan: 'wok', heatOnAt: minutes(652), readyAt: minutes(666), heatOffAt: minutes(840) }],
      oil: [{ pan: 'wok', fillLitres: fig(3, 'L'), uptakeLitres: fig(1.1, 'L'), heatUpMinutes: fig(14, 'min'), topUps: [{ afterBatch: 10, litres: 0.4 }], loadedFreeRimMm: fig(46, 'mm'), loadedFillShare: fig(0.38, '') }],
      fillLitres: fig(3, 'L'), uptakeLitres: fig(1.1, 'L'), buyLitres: fig(4.1, 'L'), batchCount: fig(batchCount, 'batches'), bowlCount: fig(5, 'bowls'), batterKg: fig(11, 'kg'), pieces: fig(300, 'pieces'), problems: [],
    },
    drinks: {
      rounds: [{ number: 1, drink: 'tea', pot: 'big', burner: 'ring', inUrn: false, startAt: minutes(620), boilAt: minutes(640), readyAt: minutes(650), startHands: 5, finishHands: 5, apart: [], madeAhead: false, note: null, litres: 6, waterLitres: fig(6.3, 'L'), heatMinutes: fig(20, 'min'), ingredients: [{ ingredient: 'black-tea', amount: amountOf('72', 'g') }] }],
      fills: [{ dispenser: 'flask', at: minutes(652), litres: 6, round: 1, leftLitres: 0, trips: 2 }],
      dispensers: [{ id: 'flask', name: 'Tea flask', drink: 'tea', capacityLitres: 6, fromMinute: minutes(650), litres: [0, 0, 6, 4, 2, 0, 0], celsius: [21, 21, 92, 91, 90, 21, 21], coolingPerHour: fig(0.05, '') }],
      totals: [], unbrewed: [], advice: [], ice: null, problems: [],
    },
    day: {
      tasks: [
        task('fritters.chop', 'step', -300, -240, { dish: 'fritters', slack: 200 }),
        task('heat-oil', 'heatOil', 652, 666, { slack: 0, needs: [{ thing: 'ring', count: 1 }, { thing: 'counter', count: 2 }] }),
        task('brew-1', 'brew', 620, 650, { who: ['tea-maker'] }), ...jobs,
      ],
      overloads: [], notes: [], off: [], critical: ['heat-oil'], busy: [{ person: 'fryer', minutes: fig(240, 'min') }], gas: [], gasNeed: null,
    },
    safety: { findings: [], notChecked: [], inOrder: [] },
  };
}
