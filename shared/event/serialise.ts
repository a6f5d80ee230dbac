import type { Event } from './schema/event';

/**
 * Order in which known fields are written, at every level: what a reader looks for first stands first. Fields not listed (unknown ones of
 * another version) follow in alphabetical order, so that the same event always gives the same bytes whatever was edited in which order.
 */
const order = [
  'format', 'id', 'title', 'name', 'day', 'timeZone', 'opensAt', 'closesAt', 'preferences',
  'units', 'paper', 'clock', 'currency', 'locale', 'cover', 'safetyProfile', 'fryLeadMinutes', 'printAllergies', 'measuring', 'scaleStepG', 'measures', 'jugStepMl',
  'guests', 'menu', 'recipes', 'kitchen', 'people', 'larder', 'prices', 'shopping', 'houseFigures', 'issuedSheets', 'serviceLog', 'review',
  'kind', 'waves', 'headcount', 'diets', 'allergies', 'higherRisk', 'diet', 'allergen', 'adults', 'children',
  'from', 'to', 'at', 'counts', 'turnout', 'share', 'low', 'likely', 'high', 'stay', 'shortest', 'usual', 'longest',
  'under1', 'age1to3', 'age4to6', 'age7to9', 'age10to12', 'age13to17', 'adult', 'olderAdult',
  'recipe', 'role', 'portion', 'takeUp', 'broughtBy', 'served', 'portions', 'holding', 'place', 'temperatureC',
  'ingredient', 'called', 'amount', 'unit', 'preparation', 'scaling', 'exponent', 'perBowl', 'toTaste', 'insteadOf', 'gave',
  'yield', 'ingredients', 'steps', 'does', 'active', 'passive', 'fixed', 'perKg', 'perBatch', 'passiveAttention', 'by', 'needs', 'thing', 'count',
  'after', 'endsBefore', 'earliest', 'latest', 'keeps', 'minutes',
  'frying', 'pieceBatterG', 'fryMinutes', 'handlingMinutes', 'holdMinutes', 'bowlMinutes', 'waterFraction', 'waterLostKgPerKg', 'oilUptakeKgPerKg',
  'batterC', 'targetC', 'crumbly', 'strongFlavour', 'fryFresh', 'moreBatches',
  'brewing', 'method', 'doseGPerL', 'doseIngredient', 'absorbMlPerG', 'milkShare', 'steepMinutes', 'potFill', 'strainLoss', 'boilMinutes', 'hot',
  'caffeinated', 'goodForMinutes', 'serveAboveC', 'cupMl', 'sugar',
  'needsTemperatureControl', 'serveHot', 'source',
  'shape', 'rimMm', 'depthMm', 'bottomMm', 'lengthMm', 'widthMm', 'material', 'oilLitres', 'burner',
  'ratedW', 'usefulShare', 'boilTest', 'fromC', 'potKg', 'wind', 'cylinder', 'portable', 'circuit', 'litres', 'massKg', 'insulation', 'coolingPerHour', 'coolTest', 'brewsW', 'startC', 'endC', 'fitForMilk', 'dish',
  'pans', 'burners', 'pots', 'dispensers', 'stations', 'dishes', 'roomC', 'waterC', 'altitudeM', 'bowlLitres', 'ovens', 'counterPlaces',
  'iceTubLitres', 'hotHoldC', 'fridgeC', 'coldLitres', 'circuits', 'cylinders', 'volts', 'amps', 'otherWatts', 'gasKg', 'oilKind', 'oilRestHours',
  'ownLines', 'borrowed', 'marks', 'shoppers', 'ownThings', 'carriesWater', 'oilBefore', 'noLoans', 'section', 'line', 'when', 'here', 'returned', 'bought', 'asked', 'later', 'who',
  'trials', 'pan', 'pieces', 'beforeG', 'afterG', 'lowestC', 'backMinutes', 'topUpMl', 'taken',
  'precautions', 'lidAtHand', 'extinguisher', 'outdoorPlace', 'wallMetres', 'flameCm', 'thermometer', 'childLine', 'friedDry', 'oilSigns', 'coAlarm', 'air', 'cylinderCm', 'leakTested',
  'extensionCord', 'protectedSockets', 'carryMetres', 'carrySteps', 'lifters', 'flaskTableCm', 'flaskTableSteady', 'adultsPour', 'tongs', 'openFoodThrown', 'cutForChildren',
  'dayJobs', 'ownJobs', 'changes', 'order', 'setUpFirst', 'restsFirst', 'relief', 'nudges', 'job', 'held', 'parts', 'off',
  'handwash', 'ill', 'occasion', 'venue', 'caterer', 'eggsChilled', 'cookedC', 'coolTrays', 'coolTrayLongCm', 'coolTrayWideCm', 'reheatIn', 'platesChanged', 'picklePh', 'pickleTested', 'address', 'emergencyNumber', 'contact', 'injectors', 'printInjectors',
  'roles', 'liftKg', 'price', 'per', 'figure', 'value', 'why', 'date', 'sheet', 'version', 'fingerprint', 'rows', 'note', 'notes',
] as const;
const rank: ReadonlyMap<string, number> = new Map(order.map((key, at) => [key, at]));

/** True when the writer has a place for a field (a test holds every field of the schema to it). */
export const hasWritingPlace = (key: string): boolean => rank.has(key);

function compareKeys(a: string, b: string): number {
  const [ra, rb] = [rank.get(a) ?? order.length, rank.get(b) ?? order.length];
  if (ra !== rb) return ra - rb;
  return a < b ? -1 : a > b ? 1 : 0;
}

function ordered(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(ordered);
  if (typeof value !== 'object' || value === null) return value;
  const fields = Object.entries(value).sort(([a], [b]) => compareKeys(a, b));
  return Object.fromEntries(fields.map(([key, item]): [string, unknown] => [key, ordered(item)]));
}

/** Writes any of the product's files: readable JSON, two spaces, fields in the fixed order, a line end at the end. The same value gives the same bytes. */
export const written = (value: unknown): string => `${JSON.stringify(ordered(value), null, 2)}\n`;

/**
 * Writes an event file: readable JSON, two spaces, fields in a fixed order, a line end at the end. The same event gives the same bytes;
 * `parseEvent` of the result gives an equal event.
 */
export const serialiseEvent = (event: Event): string => written(event);
