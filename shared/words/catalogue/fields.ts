import { safetyFieldNames } from './fields-safety';

/** One step of the way to a field of an event: a key, and for an item of a list its place (from 1) and its own name. */
export interface WhereStep {
  readonly key: string;
  readonly number?: number;
  readonly name?: string;
}
/** The way from the event to one of its fields. */
export type Where = readonly WhereStep[];

const listNames: Readonly<Record<string, string>> = {
  waves: 'wave', dishes: 'dish', recipes: 'recipe', ingredients: 'ingredient', steps: 'step', needs: 'need', after: 'step before it',
  pans: 'pan', burners: 'burner', pots: 'pot', dispensers: 'flask or urn', stations: 'fry station', circuits: 'circuit', cylinders: 'gas cylinder',
  people: 'helper', roles: 'task', larder: 'larder line', prices: 'price', ownLines: 'own line', borrowed: 'borrowed thing', marks: 'mark', shoppers: 'shopper', ownThings: 'own thing', houseFigures: 'house figure', trials: 'first batch', issuedSheets: 'printed sheet',
  ownJobs: 'own job', changes: 'change of a job', nudges: 'nudge of a step',
  serviceLog: 'log line', diets: 'diet', allergies: 'allergy',
};

/** Names of fields as the cook knows them. An empty name is a group that needs no word of its own. */
const fieldNames: Readonly<Record<string, string>> = {
  ...safetyFieldNames,
  dayJobs: '', order: 'order of the day', setUpFirst: 'setting up first', restsFirst: 'breaks first', relief: 'who takes over at the oil', job: 'job', held: 'why its minute stands', parts: 'number of parts', off: 'switched off',
  guests: '', menu: '', kitchen: '', counts: '', review: '', frying: 'frying', brewing: 'brewing', preferences: 'preferences',
  format: 'format', id: 'short name', title: 'title', name: 'name', day: 'day', timeZone: 'time zone', opensAt: 'opens', closesAt: 'closes',
  units: 'units', paper: 'paper', clock: 'clock', currency: 'currency', locale: 'language of numbers', cover: 'share of days to cover',
  safetyProfile: 'safety rules', fryLeadMinutes: 'minutes to put in early', printAllergies: 'print allergies',
  from: 'from', to: 'until', turnout: 'how sure', kind: 'kind', share: 'share who come', low: 'fewest', likely: 'most likely', high: 'most',
  stay: 'stay', shortest: 'shortest', usual: 'usual', longest: 'longest', headcount: 'headcount', adults: 'adults', children: 'children',
  under1: 'children under 1', age1to3: 'children 1 to 3', age4to6: 'children 4 to 6', age7to9: 'children 7 to 9', age10to12: 'children 10 to 12',
  age13to17: 'children 13 to 17', adult: 'adults', olderAdult: 'older adults', higherRisk: 'guests at higher risk',
  diet: 'diet', allergen: 'allergen', people: 'people', note: 'note', notes: 'notes', why: 'why', date: 'date', value: 'value', unit: 'unit',
  recipe: 'recipe', role: 'place in the meal', portion: 'portion per adult', takeUp: 'share of guests who take it', served: 'when it is served',
  at: 'time', portions: 'portions', holding: 'how it waits', place: 'place', temperatureC: 'temperature', yield: 'what the recipe makes', amount: 'amount',
  ingredient: 'ingredient', scaling: 'how it grows', exponent: 'exponent', preparation: 'preparation', does: 'what it does', active: 'hands-on time',
  passive: 'time by itself', passiveAttention: 'attention', fixed: 'fixed minutes', perKg: 'minutes per kilogram', perBatch: 'minutes per batch',
  by: 'who does it', thing: 'thing', count: 'how many', after: 'steps before it', endsBefore: 'when it must be done', keeps: 'how long it keeps', minutes: 'minutes',
  earliest: 'earliest', latest: 'latest', pieceBatterG: 'batter per piece', fryMinutes: 'minutes in the oil', handlingMinutes: 'handling minutes',
  holdMinutes: 'longest wait', bowlMinutes: 'life of a bowl', waterFraction: 'share of water', waterLostKgPerKg: 'water boiled off',
  oilUptakeKgPerKg: 'oil taken up', batterC: 'temperature of the batter', targetC: 'temperature of the oil', method: 'way of brewing',
  doseGPerL: 'leaf or grounds per litre', doseIngredient: 'leaf or grounds', absorbMlPerG: 'water kept by the leaf', milkShare: 'share of milk',
  steepMinutes: 'minutes to steep', potFill: 'how full the pot', strainLoss: 'loss in straining', boilMinutes: 'minutes at the boil',
  goodForMinutes: 'good for', serveAboveC: 'coolest to serve', cupMl: 'cup', sugar: 'sugar in the pot or beside it', shape: 'shape', rimMm: 'width at the rim', depthMm: 'depth',
  bottomMm: 'width of the bottom', lengthMm: 'length', widthMm: 'width', massKg: 'weight', material: 'material', oilLitres: 'oil', burner: 'burner',
  ratedW: 'power', usefulShare: 'share of the power that arrives', boilTest: 'test with water', fromC: 'temperature before', potKg: 'weight of the pot', wind: 'wind', cylinder: 'gas cylinder', coolTest: 'test of cooling', rows: 'rows', broughtBy: 'brought by', measuring: 'how it is measured', scaleStepG: 'step of the scale', measures: 'spoons and cups', jugStepMl: 'marks of the measuring jug', cylinders: 'gas cylinders', circuits: 'circuits', iceTubLitres: 'tub of ice', brewsW: 'power it brews with', startC: 'temperature at first', endC: 'temperature later', roomC: 'room temperature', circuit: 'circuit', litres: 'size', insulation: 'insulation',
  coolingPerHour: 'cooling per hour', fitForMilk: 'fit for milk', dish: 'dish', pans: 'pans', dishes: 'dishes',
  waterC: 'temperature of tap water', altitudeM: 'height above the sea', bowlLitres: 'size of the bowl', ovens: 'ovens', counterPlaces: 'places at the counter',
  hotHoldC: 'temperature of hot holding', fridgeC: 'temperature of the fridge', coldLitres: 'room in the cold', volts: 'volts', amps: 'amperes',
  otherWatts: 'other load', strongFlavour: 'leaves its taste in the oil', fryFresh: 'fried freshest', moreBatches: 'batches more', gasKg: 'gas', oilKind: 'kind of oil', oilRestHours: 'hours the oil rests', roles: 'tasks', liftKg: 'heaviest to lift',
  price: 'price', per: 'price is for', figure: 'figure', waves: 'waves', recipes: 'recipes', ingredients: 'ingredients', steps: 'steps', burners: 'burners',
  perBowl: 'goes into each bowl', toTaste: 'to taste', crumbly: 'crumbly', needsTemperatureControl: 'must be kept hot or cold', serveHot: 'served hot',
  source: 'source', portable: 'portable', hot: 'hot', caffeinated: 'with caffeine', sheet: 'sheet', version: 'version', fingerprint: 'fingerprint',
  pots: 'pots', dispensers: 'flasks and urns', stations: 'fry stations', larder: 'larder', prices: 'prices', houseFigures: 'house figures',
  shopping: 'shopping', ownLines: 'own lines', borrowed: 'borrowed', noLoans: 'not to be borrowed', marks: 'marks', shoppers: 'shoppers', ownThings: 'own things', carriesWater: 'water is brought along', oilBefore: 'oil before',
  section: 'section', line: 'line', when: 'day to buy it', here: 'is here', returned: 'has gone back', bought: 'bought', asked: 'asked for', later: 'later', who: 'who buys it', insteadOf: 'in place of', gave: 'amount that came instead', called: 'what it is called',
};

const named = (names: Readonly<Record<string, string>>, key: string): string => (Object.hasOwn(names, key) ? (names[key] ?? key) : `"${key}"`);

function stepText({ key, number, name }: WhereStep): string {
  if (number === undefined) return named(fieldNames, key);
  return `${named(listNames, key)} ${number}${name === undefined ? '' : ` (${name})`}`;
}

/** "Wave 2 (Lunch), until": where in the event something stands, in the cook's words. Empty for the event as a whole. */
export function whereText(where: Where): string {
  const parts = where.map(stepText).filter((text, at, all) => text !== '' && text !== all[at - 1]);
  const text = parts.join(', ');
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** True when a field has a name of its own (a test holds every field of the schema to it). */
export const hasFieldName = (key: string): boolean => Object.hasOwn(fieldNames, key) || Object.hasOwn(listNames, key);
