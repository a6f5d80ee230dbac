import * as fc from 'fast-check';
import { allergenIds, bandIds, dietIds, eventFormat, readEvent, roleIds, thingIds, type Event } from '../../../shared/event';
import { unitIds } from '../../../shared/measure';

/** Numbers as people write them: whole or with one or two decimals, never -0. */
const number = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: Math.ceil(min * 100), max: Math.floor(max * 100) }).map((n) => n / 100 + 0);
const whole = (min: number, max: number): fc.Arbitrary<number> => fc.integer({ min, max });
const decimal = fc.tuple(whole(1, 9999), whole(0, 999)).map(([a, b]) => (b === 0 ? String(a) : `${a}.${b}`));
/** A portion that somebody can eat, whatever the unit: not above 5 kg, 5 L or 100 pieces. */
const portion = fc.record({ amount: whole(1, 999).map((n) => `0.${String(n).padStart(3, '0')}`), unit: fc.constantFrom(...unitIds) });
const amount = fc.record({ amount: decimal, unit: fc.constantFrom(...unitIds) });
const name = fc.string({ minLength: 1, maxLength: 12, unit: 'grapheme' }).map((s) => s.trim() || 'x');
const text = fc.string({ maxLength: 20, unit: 'grapheme' });
const minute = whole(-2000, 2500);
const share = whole(0, 100).map((n) => n / 100);
const isoDay = fc.tuple(whole(2020, 2040), whole(1, 12), whole(1, 28)).map(([y, m, d]) => `${y}-${String(m).padStart(2, '0')}-${String(d).padStart(2, '0')}`);
const sorted3 = (a: fc.Arbitrary<number>): fc.Arbitrary<[number, number, number]> =>
  fc.tuple(a, a, a).map((t) => { const [x = 0, y = 0, z = 0] = t.toSorted((p, q) => p - q); return [x, y, z]; });
const pair = (a: fc.Arbitrary<number>): fc.Arbitrary<[number, number]> => fc.tuple(a, a).map(([x, y]) => (x <= y ? [x, y] : [y, x]));
const ids = (prefix: string, count: number): string[] => Array.from({ length: count }, (_, at) => `${prefix}-${at + 1}`);
const optional: { requiredKeys: [] } = { requiredKeys: [] };

/** Fields of another version: names nobody knows, values of every JSON kind, hostile names included. */
const unknownFields = fc.dictionary(
  fc.constantFrom('x-mine', 'zebra', 'Äpfel', 'constructor', 'toString', 'prototype', 'x y', '1'),
  fc.oneof(fc.string(), whole(-5, 5), fc.boolean(), fc.constant(null), fc.array(whole(0, 3), { maxLength: 2 }), fc.record({ b: whole(0, 9), a: text })), { maxKeys: 2, noNullPrototype: true });
/** A group with unknown fields mixed in. */
const open = <T extends object>(known: fc.Arbitrary<T>): fc.Arbitrary<T> => fc.tuple(known, unknownFields).map(([k, u]) => ({ ...u, ...k }));
const listOf = <T extends object>(names: readonly string[], item: (id: string) => fc.Arbitrary<T>): fc.Arbitrary<T[]> =>
  fc.tuple(...names.map((id) => open(item(id)))).map((all) => all);

const counts = open(fc.record(Object.fromEntries(bandIds.map((band) => [band, whole(0, 40)])), optional));
const wave = (id: string) => fc.record({
  id: fc.constant(id), name, window: pair(minute), counts,
  turnout: fc.oneof(fc.constant({ kind: 'known' }), fc.record({ kind: fc.constant('share'), share }), sorted3(whole(0, 90)).map(([low, likely, high]) => ({ kind: 'range', low, likely, high }))),
  stay: open(sorted3(whole(1, 400)).map(([shortest, usual, longest]) => ({ shortest, usual, longest }))),
}).map(({ window: [from, to], ...rest }) => ({ ...rest, from, to }));

const stepMinutes = open(fc.record({ fixed: number(0, 300), perKg: number(0, 20), perBatch: number(0, 20) }, optional));
const step = (names: readonly string[]) => (id: string) => fc.record({
  id: fc.constant(id), name, does: fc.constantFrom('prepare', 'soak', 'boil', 'fry', 'cool', 'other'), active: stepMinutes, passive: stepMinutes,
  passiveAttention: share, by: fc.constantFrom('cook', 'tea'), needs: fc.array(open(fc.record({ thing: fc.constantFrom(...thingIds), count: whole(1, 3) })), { maxLength: 2 }),
  after: fc.subarray(names.slice(0, names.indexOf(id))),
  endsBefore: fc.record({ earliest: whole(0, 3000), latest: whole(0, 3000) }),
  keeps: fc.record({ place: fc.constantFrom('counter', 'hot', 'cold', 'freezer'), minutes: whole(0, 9000) }),
}, { requiredKeys: ['id', 'name', 'after'] });

const frying = open(fc.record({
  pieceBatterG: number(2, 60), fryMinutes: number(1, 9), handlingMinutes: number(0, 3), holdMinutes: number(5, 60), bowlMinutes: fc.option(number(5, 60)),
  waterFraction: number(0.2, 0.9), waterLostKgPerKg: number(0, 0.5), oilUptakeKgPerKg: number(0, 0.3), batterC: number(0, 25), targetC: number(160, 190), crumbly: fc.boolean(), strongFlavour: fc.boolean(),
}, { requiredKeys: ['pieceBatterG', 'fryMinutes'] }));
const brewing = open(fc.record({
  method: fc.constantFrom('infuse', 'boilWithMilk', 'filter', 'cold'), doseGPerL: number(0, 60), doseIngredient: fc.constant('leaf'), absorbMlPerG: number(0, 5), milkShare: share,
  steepMinutes: number(0, 20), potFill: number(0.3, 0.9), strainLoss: number(0, 0.1), boilMinutes: number(0, 20), hot: fc.boolean(), caffeinated: fc.boolean(),
  goodForMinutes: number(10, 300), serveAboveC: fc.option(number(0, 80)), cupMl: number(60, 300), sugar: fc.constantFrom('in', 'apart'),
}, { requiredKeys: ['method', 'hot', 'cupMl'] }));
const recipe = (id: string) => whole(0, 4).chain((steps) => fc.record({
  id: fc.constant(id), name, role: fc.constantFrom(...roleIds),
  yield: open(fc.record({ amount: open(amount), portions: number(1, 100) })),
  ingredients: fc.array(open(fc.record({
    ingredient: fc.constantFrom('salt', 'spinach', 'sugar'), called: name, amount: open(amount), preparation: text,
    scaling: fc.oneof(fc.constant({ kind: 'linear' }), fc.constant({ kind: 'fixed' }), fc.record({ kind: fc.constant('damped'), exponent: number(0.3, 1) })), perBowl: fc.boolean(), toTaste: fc.boolean(),
    insteadOf: open(fc.record({ ingredient: fc.constantFrom('ghee', 'butter'), amount: open(amount), gave: open(amount) }, { requiredKeys: ['ingredient', 'amount'] })),
  }, { requiredKeys: ['ingredient', 'amount'] })), { maxLength: 3 }).map((lines) => [{ ingredient: 'leaf', amount: { amount: '10', unit: 'g' } }, ...lines]),
  steps: listOf(ids('step', steps), step(ids('step', steps))), frying, brewing,
  needsTemperatureControl: fc.boolean(), serveHot: fc.boolean(), source: text, notes: text,
}, { requiredKeys: ['id', 'name', 'role', 'yield', 'ingredients', 'steps'] }));

const dish = (recipes: readonly string[]) => (id: string) => fc.record({
  id: fc.constant(id), recipe: fc.constantFrom(...recipes), name, portion: open(portion), takeUp: share, broughtBy: name,
  served: fc.oneof(fc.constant({ kind: 'throughout' }), pair(minute).map(([from, to]) => ({ kind: 'between', from, to })), fc.record({ kind: fc.constant('fixed'), at: minute, portions: whole(0, 90) })),
  holding: fc.record({ place: fc.constantFrom('counter', 'hot', 'cold'), temperatureC: number(-20, 90) }, { requiredKeys: ['place'] }), fryFresh: fc.record({ moreBatches: whole(0, 3) }),
}, { requiredKeys: ['id', 'recipe'] });

const pan = (burners: readonly string[]) => (id: string) => fc.record({
  id: fc.constant(id), name, shape: fc.constantFrom('round', 'flatWok', 'straight', 'rectangular'), rimMm: number(150, 600), depthMm: number(50, 200), bottomMm: number(100, 300),
  lengthMm: number(100, 500), widthMm: number(100, 500), massKg: number(1, 9), material: fc.constantFrom('steel', 'iron'), oilLitres: number(1, 9), burner: fc.constantFrom(...burners),
}, { requiredKeys: ['id', 'name', 'shape', 'rimMm', 'depthMm', 'lengthMm', 'widthMm', 'oilLitres', 'burner'] });
const burner = (id: string) => fc.record({
  id: fc.constant(id), name, kind: fc.constantFrom('gas', 'lpg', 'electric', 'induction', 'outdoorGas'), ratedW: number(500, 9000), usefulShare: number(0.2, 0.9),
  boilTest: fc.record({ litres: number(1, 10), fromC: number(5, 30), minutes: number(5, 60), potKg: number(0.5, 4) }), wind: fc.constantFrom('calm', 'breeze', 'wind'), cylinder: fc.constant('cylinder-1'),
  place: fc.constantFrom('indoor', 'outdoor'), portable: fc.boolean(), circuit: fc.constant('circuit-1'),
}, { requiredKeys: ['id', 'name', 'kind', 'ratedW'] });
const pot = (id: string) => fc.record({ id: fc.constant(id), name, litres: number(1, 30), massKg: number(1, 9) });
const dispenser = (dishes: readonly string[]) => (id: string) => fc.record({
  id: fc.constant(id), name, litres: number(1, 30), massKg: number(1, 9), insulation: fc.constantFrom('foam', 'vacuum', 'none', 'heated'), coolingPerHour: number(0.01, 1),
  brewsW: whole(500, 3000), circuit: fc.constant('circuit-1'), coolTest: fc.record({ startC: number(80, 95), endC: number(60, 79), minutes: number(30, 240), roomC: number(5, 30) }),
  fitForMilk: fc.boolean(), ...(dishes.length > 0 ? { dish: fc.constantFrom(...dishes) } : {}),
}, { requiredKeys: ['id', 'name', 'litres', 'insulation'] });
const station = (pans: readonly string[], dishes: readonly string[]) => (id: string) => fc.record({ id: fc.constant(id), name, pans: fc.subarray([...pans], { minLength: 1 }), dishes: fc.subarray([...dishes]) });
const kitchen = (dishes: readonly string[]) => fc.tuple(whole(1, 3), whole(0, 2), whole(0, 2), whole(0, 2)).chain(([burners, pans, pots, dispensers]) => fc.record({
  burners: listOf(ids('burner', burners), burner), pans: listOf(ids('pan', pans), pan(ids('burner', burners))), pots: listOf(ids('pot', pots), pot),
  dispensers: listOf(ids('flask', dispensers), dispenser(dishes)), stations: listOf(ids('station', pans > 0 ? 1 : 0), station(ids('pan', pans), dishes)),
  circuits: listOf(ids('circuit', 1), (id) => fc.record({ id: fc.constant(id), name, volts: number(100, 240), amps: number(5, 32), otherWatts: number(0, 900) })),
  cylinders: listOf(ids('cylinder', 1), (id) => fc.record({ id: fc.constant(id), name, gasKg: number(1, 20), place: fc.constantFrom('indoor', 'outdoor') })),
  iceTubLitres: number(5, 60), roomC: number(5, 35), waterC: number(5, 25), altitudeM: whole(0, 3000), bowlLitres: number(1, 20), ovens: whole(0, 3), counterPlaces: whole(1, 9),
  hotHoldC: fc.option(number(50, 90)), fridgeC: fc.option(number(0, 10)), coldLitres: fc.option(number(10, 900)), oilKind: fc.constant('sunflower-refined'), oilRestHours: number(0, 24),
}, { requiredKeys: ['burners', 'pans', 'pots', 'dispensers', 'stations', 'circuits'] }));

const preferences = open(fc.record({
  units: fc.constantFrom('metric', 'us'), paper: fc.constantFrom('a4', 'letter'), clock: fc.constantFrom('24', '12'), currency: fc.constantFrom('EUR', 'USD'), locale: fc.constantFrom('en-GB', 'de-DE'),
  cover: number(0.5, 0.99), safetyProfile: fc.constantFrom('household', 'us', 'uk', 'eu'), fryLeadMinutes: number(0, 30), printAllergies: fc.boolean(),
  measuring: open(fc.record({ scaleStepG: fc.option(whole(1, 100)), jugStepMl: fc.option(whole(1, 250)), measures: fc.subarray(['cup', 'tbsp', 'tsp']) }, optional)),
}, optional));
const guests = whole(0, 4).chain((waves) => open(fc.record({
  waves: listOf(ids('wave', waves), wave), headcount: fc.record({ adults: fc.option(whole(0, 300)), children: fc.option(whole(0, 300)) }),
  diets: fc.uniqueArray(open(fc.record({ diet: fc.constantFrom(...dietIds), people: whole(1, 9) })), { maxLength: 2, selector: (d) => d.diet }),
  allergies: fc.uniqueArray(open(fc.record({ allergen: fc.constantFrom(...allergenIds), people: whole(1, 9), note: text }, { requiredKeys: ['allergen', 'people'] })), { maxLength: 2, selector: (a) => a.allergen }),
  higherRisk: fc.option(fc.boolean()),
}, { requiredKeys: ['waves'] })));

const rawEvent = fc.tuple(whole(1, 3), whole(0, 3), whole(0, 3)).chain(([recipes, dishes, people]) => open(fc.record({
  format: fc.constant(eventFormat), id: fc.constantFrom('party', 'E-1'), title: name, day: isoDay, timeZone: fc.constantFrom('UTC', 'Europe/Paris'),
  hours: fc.tuple(whole(0, 900), whole(1, 900)), preferences, guests,
  menu: listOf(ids('dish', dishes), dish(ids('recipe', recipes))).map((list) => ({ dishes: list })),
  recipes: listOf(ids('recipe', recipes), recipe), kitchen: open(kitchen(ids('dish', dishes))),
  people: listOf(ids('helper', people), (id) => fc.record({ id: fc.constant(id), name, roles: fc.constantFrom(['cook'], ['tea', 'runner']), hours: pair(minute), liftKg: number(5, 30) }, { requiredKeys: ['id', 'name', 'roles', 'hours'] })
    .map(({ hours: [from, to], ...rest }) => ({ ...rest, from, to }))),
  larder: fc.uniqueArray(fc.record({ ingredient: fc.constantFrom('salt', 'sugar'), amount: fc.record({ amount: decimal, unit: fc.constantFrom('g', 'kg') }) }), { maxLength: 2, selector: (l) => l.ingredient }),
  prices: fc.uniqueArray(open(fc.record({ ingredient: fc.constantFrom('salt', 'sugar'), price: decimal, per: fc.record({ amount: decimal, unit: fc.constantFrom('g', 'kg') }), note: text }, { requiredKeys: ['ingredient', 'price', 'per'] })), { maxLength: 2, selector: (l) => l.ingredient }),
  shopping: open(fc.record({
    ownLines: listOf(['own-1'], (id) => fc.record({ id: fc.constant(id), name, amount, section: fc.constantFrom('other', 'bread'), when: isoDay }, { requiredKeys: ['id', 'name', 'amount'] })),
    borrowed: listOf(['lent-1'], (id) => fc.record({ id: fc.constant(id), name, count: whole(1, 60), from: text, here: fc.boolean(), returned: fc.boolean() }, { requiredKeys: ['id', 'name'] })),
    marks: fc.array(open(fc.record({ line: fc.constantFrom('salt', 'own/own-1'), bought: amount, asked: amount, later: fc.boolean() }, { requiredKeys: ['line'] })), { maxLength: 2 }),
    shoppers: fc.array(open(fc.record({ line: fc.constantFrom('salt', 'own/own-1'), section: fc.constantFrom('bread', 'fruit'), who: name }, { requiredKeys: ['who'] })), { maxLength: 2 }),
    ownThings: fc.uniqueArray(fc.constantFrom('hot-cups', 'plates'), { maxLength: 2 }),
    noLoans: fc.uniqueArray(fc.constantFrom('ice-tub', 'cool-box'), { maxLength: 2 }), carriesWater: fc.boolean(), oilBefore: fc.constantFrom('sunflower-refined', 'lard'),
  }, optional)),
  dayJobs: open(fc.record({
    ownJobs: listOf(['own-1'], (id) => fc.record({ id: fc.constant(id), name, minutes: whole(1, 90) }, { requiredKeys: ['id', 'name'] })),
    changes: fc.uniqueArray(open(fc.record({ job: fc.constantFrom('clean/kitchen', 'set-up/tables'), at: minute, held: fc.constantFrom('pinned', 'printed'), minutes: whole(1, 90), parts: whole(2, 6), off: fc.boolean() }, { requiredKeys: ['job'] })), { maxLength: 2, selector: (c) => c.job }),
    order: open(fc.record({ setUpFirst: fc.boolean(), restsFirst: fc.boolean(), relief: fc.constantFrom('none', 'early'), nudges: fc.array(open(fc.record({ job: fc.constantFrom('step/a/b', 'step/c/d'), by: whole(-90, 90) })), { maxLength: 2 }) }, optional)),
  }, optional)),
  houseFigures: fc.uniqueArray(open(fc.record({ figure: fc.constantFrom('fry.dw', 'portion.friedSnack'), value: number(0.02, 1.2), unit: fc.constantFrom('', 'kg'), why: name, date: isoDay }, { requiredKeys: ['figure', 'value', 'why'] })), { maxLength: 2, selector: (h) => h.figure }),
  issuedSheets: fc.array(open(fc.record({ sheet: text, version: fc.constantFrom('A', 'B', 'AA'), at: text, fingerprint: text })), { maxLength: 2 }),
  serviceLog: fc.array(open(fc.record({ at: minute, kind: name })), { maxLength: 2 }),
  review: open(fc.record({ notes: text }, optional)),
}, { requiredKeys: ['format', 'id', 'title', 'day', 'hours', 'menu', 'recipes', 'kitchen', 'people'] })).map(({ hours: [opensAt, open], ...rest }) => ({ ...rest, opensAt, closesAt: opensAt + open })));

/** Sound events of every shape, with fields of other versions at every level. */
export const arbitraryEvent: fc.Arbitrary<Event> = rawEvent.map((raw) => {
  const read = readEvent(raw);
  if (!read.ok) throw new Error(`the arbitrary made an unsound event: ${JSON.stringify(read.problems.slice(0, 3))}`);
  return read.event;
});
