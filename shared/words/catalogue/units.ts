import type { Entry, Formats } from '../formats';

/** Name of a unit: a sign that never changes, or a word with its plural. */
export type UnitName = string | ((p: { readonly count: number }, f: Formats) => string);

const word = (one: string, other: string) => (p: { readonly count: number }, f: Formats): string => f.plural(p.count, one, other);

/** Names of units by `unit.<id>`: those an amount may carry, and those only figures use. */
export const unitNames = {
  'unit.g': 'g', 'unit.kg': 'kg', 'unit.oz': 'oz', 'unit.lb': 'lb',
  'unit.ml': 'ml', 'unit.L': 'L', 'unit.tsp': 'tsp', 'unit.tbsp': 'tbsp', 'unit.floz': 'fl oz',
  'unit.cup': word('cup', 'cups'), 'unit.pint': word('pint', 'pints'), 'unit.quart': word('quart', 'quarts'), 'unit.gallon': word('gallon', 'gallons'),
  'unit.metricCup': word('metric cup', 'metric cups'), 'unit.metricTbsp': 'metric tbsp', 'unit.metricTsp': 'metric tsp',
  'unit.piece': word('piece', 'pieces'), 'unit.bunch': word('bunch', 'bunches'), 'unit.clove': word('clove', 'cloves'),
  'unit.slice': word('slice', 'slices'), 'unit.pinch': word('pinch', 'pinches'),
  'unit.people': word('person', 'people'), 'unit.pieces': word('piece', 'pieces'), 'unit.portions': word('portion', 'portions'),
  'unit.cups': word('cup', 'cups'), 'unit.batches': word('batch', 'batches'), 'unit.bowls': word('bowl', 'bowls'), 'unit.boxes': word('box', 'boxes'), 'unit.bags': word('bag', 'bags'),
  'unit.rounds': word('round', 'rounds'), 'unit.days': word('day', 'days'), 'unit.packs': word('pack', 'packs'),
  'unit.W': 'W', 'unit.kW': 'kW', 'unit.kWh': 'kWh', 'unit.kg/L': 'kg/L', 'unit.lb/qt': 'lb/qt', 'unit.mm': 'mm', 'unit.in': 'in', 'unit.kg/h': 'kg/h', 'unit.lb/h': 'lb/h', 'unit.percent': '%',
} as const satisfies Record<string, UnitName>;

/** Words of the subject `units`: unit names, weekdays, months, clock and length of time. */
export const unitsWords = {
  ...unitNames,
  'time.am': 'am', 'time.pm': 'pm', 'time.h': 'h', 'time.min': 'min', 'time.s': 's',
  'degrees.celsius': '°C', 'degrees.fahrenheit': '°F',
  'degrees.difference': (p: { readonly count: number; readonly text: string }, f: Formats): string => `${p.text} ${f.plural(p.count, 'degree', 'degrees')}`,
  'amount.and': 'and',
} as const satisfies Record<string, Entry>;

/** Names of the weekdays, Monday first. */
export const weekdays = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;
/** Names of the months. */
export const months = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December'] as const;
/** Language the catalogue is written in: its plural rule and its way of writing lists. */
export const catalogueLanguage = 'en-GB';
