import type { AmountWords, Entry, Formats, Inner } from '../formats';

/** Adults and children, as counts. */
export interface GuestWords { readonly adults: number; readonly children: number }
/** A value before and after, for a change. */
export interface FromTo { readonly before: number; readonly after: number }

const people = (p: GuestWords, f: Formats): string => {
  const adults = `${f.number(p.adults)} ${f.plural(p.adults, 'adult', 'adults')}`;
  const children = `${f.number(p.children)} ${f.plural(p.children, 'child', 'children')}`;
  if (p.children === 0) return adults;
  return p.adults === 0 ? children : `${adults} and ${children}`;
};
const counted = (f: Formats, n: number, one: string, other: string): string => `${f.number(n)} ${f.plural(n, one, other)}`;
const level = { stop: 'Stop', warn: 'Change it', caution: 'Keep an eye on it' } as const;
const move = (f: Formats, p: FromTo): string => `${f.clock(p.before)} to ${f.clock(p.after)} (${f.duration(Math.abs(Math.round(p.after) - Math.round(p.before)))} ${p.after < p.before ? 'earlier' : 'later'})`;
const amounts = (f: Formats, p: { readonly before: AmountWords; readonly after: AmountWords }): string => `${f.amount(p.before)} to ${f.amount(p.after)}`;

/** Words of the subject `report`: the plan on one page of text, the shopping table, and what changed between two plans. */
export const reportWords = {
  'report.title': (p: { readonly title: string; readonly day: string; readonly opensAt: number; readonly closesAt: number }, f) => `${p.title}: ${f.date(p.day)}, ${f.clock(p.opensAt)} to ${f.clock(p.closesAt)}`,
  'report.guests': 'Guests',
  'report.menu': 'Menu',
  'report.shopping': 'Shopping',
  'report.frying': 'Frying',
  'report.drinks': 'Drinks',
  'report.day': 'The day',
  'report.safety': 'What needs attention',
  'report.people': (p: GuestWords, f) => people(p, f),
  'report.planned': (p: { readonly planned: number; readonly cover: number }, f) => `amounts are enough for ${f.number(p.planned)} people, on ${f.number(p.cover * 10, 1)} days of 10`,
  'report.peak': (p: { readonly people: number; readonly at: number }, f) => `most at once: about ${counted(f, Math.round(p.people), 'person', 'people')} at ${f.clock(p.at)}`,
  'report.wave': (p: GuestWords & { readonly name: string; readonly from: number; readonly to: number }, f) => `${p.name}: ${people(p, f)}, arriving ${f.clock(p.from)} to ${f.clock(p.to)}`,
  'report.noGuests': 'no guests: this is stock for the household',
  'report.dish.piece': (p: { readonly name: string; readonly portions: number }, f) => `${p.name}: ${counted(f, p.portions, 'piece', 'pieces')}`,
  'report.dish.cup': (p: { readonly name: string; readonly portions: number; readonly total: AmountWords }, f) => `${p.name}: ${counted(f, p.portions, 'cup', 'cups')}, ${f.amount(p.total)}`,
  'report.dish.portion': (p: { readonly name: string; readonly portions: number; readonly total: AmountWords }, f) => `${p.name}: ${counted(f, p.portions, 'portion', 'portions')}, ${f.amount(p.total)}`,
  'report.noDishes': 'no dishes yet',
  'report.buy': (p: { readonly name: string; readonly buy: AmountWords; readonly food: string }, f) => `${p.name} ${f.amountOf(p.buy, p.food)}`,
  'report.cost': (p: { readonly cost: string }, f) => `known prices add up to ${f.money(p.cost)}`,
  'report.unknown': (p: { readonly names: readonly string[] }, f) => `not in the tables, so listed as the recipe measures it: ${f.list(p.names)}`,
  'report.allInHouse': 'everything is in the house',
  'report.fryDish': (p: { readonly dish: string; readonly batches: number; readonly pieces: number; readonly first: number; readonly last: number }, f) => `${p.dish}: ${counted(f, p.batches, 'batch', 'batches')}, ${counted(f, p.pieces, 'piece', 'pieces')}; first put in ${f.clock(p.first)}, last lifted out ${f.clock(p.last)}`,
  'report.load': (p: { readonly pan: string; readonly dish: string; readonly pieces: number }, f) => `in the pan at once: ${counted(f, p.pieces, 'piece', 'pieces')} of ${p.dish} in ${p.pan}`,
  'report.bowls': (p: { readonly bowls: number; readonly batterKg: number }, f) => `${counted(f, p.bowls, 'bowl', 'bowls')} of batter, ${f.figure(p.batterKg, 'kg')} in all; add the raising agent to each bowl only when it is its turn`,
  'report.oil': (p: { readonly buy: number; readonly fill: number }, f) => `oil: ${f.figure(p.fill, 'L')} in the pans, ${f.figure(p.buy, 'L')} for frying, all day`,
  'report.heat': (p: { readonly pan: string; readonly on: number; readonly off: number }, f) => `${p.pan}: heat on ${f.clock(p.on)}, off ${f.clock(p.off)}; somebody watches the oil all the time`,
  'report.unmet': (p: { readonly dish: string; readonly unmet: number; readonly from: number; readonly to: number }, f) => `${p.dish}: ${counted(f, p.unmet, 'piece', 'pieces')} too few from ${f.clock(p.from)} to ${f.clock(p.to)}`,
  'report.rounds': (p: { readonly drink: string; readonly rounds: number; readonly litres: number; readonly first: number }, f) => `${p.drink}: ${counted(f, p.rounds, 'round', 'rounds')}, ${f.figure(p.litres, 'L')}; first started ${f.clock(p.first)}`,
  'report.fill': (p: { readonly dispenser: string; readonly times: readonly number[] }, f) => `fill ${p.dispenser} at ${f.list(p.times.map((at) => f.clock(at)))}`,
  'report.task': (p: { readonly at: number; readonly end: number; readonly name: string; readonly who: readonly string[] }, f) => `${f.clock(p.at)} to ${f.clock(p.end)}: ${p.name}${p.who.length === 0 ? '' : ` (${f.list(p.who)})`}`,
  'report.moreTasks': (p: { readonly count: number }, f) => `and ${counted(f, p.count, 'more job', 'more jobs')} on the day plan`,
  'report.overload': (p: { readonly name: string; readonly message: Inner }) => `${p.name}: ${String(p.message)}`,
  'report.finding': (p: { readonly level: keyof typeof level; readonly text: string }) => `${level[p.level]}: ${p.text}`,
  'report.notChecked': (p: { readonly count: number }, f) => `${counted(f, p.count, 'rule', 'rules')} could not be checked, for something is not known yet`,
  'report.inOrder': 'nothing',
  'report.guidance': 'This is guidance. Local rules for food, fire, gas and electricity come first.',
  'report.fryingOil': 'frying oil',

  'report.csv.section': 'Section', 'report.csv.ingredient': 'Ingredient', 'report.csv.need': 'Needed', 'report.csv.larder': 'In the house',
  'report.csv.buy': 'Buy', 'report.csv.unit': 'Unit', 'report.csv.packs': 'Packs', 'report.csv.for': 'For', 'report.csv.cost': 'Cost',

  'change.none': 'Nothing changes that you would notice.',
  'change.all': (p: { readonly count: number }, f) => `All ${counted(f, p.count, 'change', 'changes')}`,
  'change.finding.new': (p: { readonly level: keyof typeof level; readonly finding: Inner }) => `New: ${level[p.level].toLowerCase()}: ${String(p.finding)}`,
  'change.finding.gone': (p: { readonly finding: Inner }) => `In order now: ${String(p.finding)}`,
  'change.finding.worse': (p: { readonly level: keyof typeof level; readonly finding: Inner }) => `More serious now (${level[p.level].toLowerCase()}): ${String(p.finding)}`,
  'change.finding.milder': (p: { readonly level: keyof typeof level; readonly finding: Inner }) => `Less serious now (${level[p.level].toLowerCase()}): ${String(p.finding)}`,
  'change.buy.more': (p: { readonly name: string; readonly before: AmountWords; readonly after: AmountWords }, f) => `Buy more ${p.name}: ${amounts(f, p)}`,
  'change.buy.fewer': (p: { readonly name: string; readonly before: AmountWords; readonly after: AmountWords }, f) => `Buy less ${p.name}: ${amounts(f, p)}`,
  'change.buy.new': (p: { readonly name: string; readonly after: AmountWords }, f) => `Buy ${p.name} too: ${f.amount(p.after)}`,
  'change.buy.gone': (p: { readonly name: string; readonly before: AmountWords }, f) => `No ${p.name} to buy any more (was ${f.amount(p.before)})`,
  'change.frying.first': (p: FromTo & { readonly dish: string }, f) => `First ${p.dish} put in: ${move(f, p)}`,
  'change.frying.last': (p: FromTo & { readonly dish: string }, f) => `Last ${p.dish} lifted out: ${move(f, p)}`,
  'change.oil.on': (p: FromTo & { readonly pan: string }, f) => `Heat on under ${p.pan}: ${move(f, p)}`,
  'change.drinks.first': (p: FromTo & { readonly drink: string }, f) => `First round of ${p.drink} started: ${move(f, p)}`,
  'change.task.moved': (p: FromTo & { readonly name: Inner }, f) => `${String(p.name)}: ${move(f, p)}`,
  'change.task.new': (p: { readonly name: Inner; readonly at: number }, f) => `New job at ${f.clock(p.at)}: ${String(p.name)}`,
  'change.task.gone': (p: { readonly name: Inner }) => `Job falls away: ${String(p.name)}`,
  'change.adults': (p: FromTo, f) => `${f.number(p.before)} to ${counted(f, p.after, 'adult', 'adults')}`,
  'change.children': (p: FromTo, f) => `${f.number(p.before)} to ${counted(f, p.after, 'child', 'children')}`,
  'change.portions.piece': (p: FromTo & { readonly dish: string }, f) => `${p.dish}: ${f.number(p.before)} to ${counted(f, p.after, 'piece', 'pieces')}`,
  'change.portions.cup': (p: FromTo & { readonly dish: string }, f) => `${p.dish}: ${f.number(p.before)} to ${counted(f, p.after, 'cup', 'cups')}`,
  'change.portions.portion': (p: FromTo & { readonly dish: string }, f) => `${p.dish}: ${f.number(p.before)} to ${counted(f, p.after, 'portion', 'portions')}`,
  'change.dish.new': (p: { readonly dish: string }) => `${p.dish} is new on the menu`,
  'change.dish.gone': (p: { readonly dish: string }) => `${p.dish} is off the menu`,
  'change.batches': (p: FromTo, f) => `Frying: ${f.number(p.before)} to ${counted(f, p.after, 'batch', 'batches')}`,
  'change.bowls': (p: FromTo, f) => `Batter: ${f.number(p.before)} to ${counted(f, p.after, 'bowl', 'bowls')}`,
  'change.batter': (p: FromTo, f) => `Batter: ${f.figure(p.before, 'kg')} to ${f.figure(p.after, 'kg')}`,
  'change.brewed': (p: FromTo & { readonly drink: string }, f) => `${p.drink}: ${f.figure(p.before, 'L')} to ${f.figure(p.after, 'L')}`,
  'change.rounds': (p: FromTo & { readonly drink: string }, f) => `${p.drink}: ${f.number(p.before)} to ${counted(f, p.after, 'round', 'rounds')}`,
  'change.unmet': (p: FromTo, f) => `Fried pieces that come too late: ${f.number(p.before)} to ${f.number(p.after)}`,
  'change.cost': (p: { readonly before: string; readonly after: string }, f) => `Known prices: ${f.money(p.before)} to ${f.money(p.after)}`,
} as const satisfies Record<string, Entry>;
