import type { AmountWords, Entry, Formats } from '../formats';

/** Which part of a dish a job is about: which cooking of how many, which go of how many, how much, in which pot. */
export interface CookingPart {
  readonly turn: number;
  readonly turns: number;
  readonly go: number;
  readonly goes: number;
  readonly amount: AmountWords;
  readonly pot?: string;
}

/** What is measured by volume stands in jugs. */
const isLiquid = ({ unit }: AmountWords): boolean => unit === 'ml' || unit === 'L';
const litres = (n: number, f: Formats): string => `${f.number(n, 1)} L`;
const often = (n: number, f: Formats): string => (n === 2 ? 'twice' : `${f.number(n)} times`);

/** The part in words, to stand behind the name of a job; empty for what is cooked once in any pot. */
export function partWords(part: CookingPart | undefined, f: Formats): string {
  if (part === undefined) return '';
  const words = [
    ...(part.turns > 1 ? [`cooking ${f.number(part.turn)} of ${f.number(part.turns)}`] : []),
    ...(part.goes > 1 ? [`go ${f.number(part.go)} of ${f.number(part.goes)}`] : []),
    ...(part.turns > 1 || part.goes > 1 ? [f.amount(part.amount)] : []),
    ...(part.pot === undefined ? [] : [`in ${part.pot}`]),
  ];
  return words.length === 0 ? '' : ` (${words.join(', ')})`;
}

/** Words of the room `cooking`. */
export const cookingWords = {
  'rule.cooking.keeps': 'The shorter of what its recipe says it keeps and what food may stand out.',
  'rule.cooking.keepsHeld': 'It stands hot enough or cold enough: the longer of what its recipe says and what food is good for then.',
  'rule.cooking.bowlStands': 'How long a bowl may stand on the table under the rules in force.',
  'rule.cooking.partKg': 'Weight of the whole dish times the portions of this cooking, divided by all portions.',
  'rule.cooking.potLitres': 'The fullest moment of the pot: cooked weight divided by its density; or what goes in, a kilogram a litre; or soaked beans with the water that covers them.',
  'rule.cooking.usable': 'The largest pot to the rim, times how full it may be.',
  'rule.cooking.goes': 'What stands in the pot, divided by what the largest pot takes; up to the next whole go.',
  'rule.cooking.servedFor': 'From the first portion to the last.',
  'rule.cooking.potWanted': 'What stands in the pot, divided by how full it may be.',
  'rule.cooking.noPot': 'The kitchen names no pot.',
  'rule.cooking.count': 'The fewest servings that hold every portion and stay within the keeping time; each is cooked for itself.',
  'rule.cooking.potTime': 'Minutes each cooking takes its pot for, with washing it, added up.',
  'rule.cooking.potThere': 'Pots, times the minutes from when the first may be put on to when the last is served.',
  'rule.cooking.stood': 'From when it is ready to its last portion.',
  'cooking.term.recipeKeeps': 'Keeps, by its recipe', 'cooking.term.cookedKg': 'Cooked, of this cooking', 'cooking.term.rawKg': 'What goes in', 'cooking.term.beansKg': 'Dry beans', 'cooking.term.wholeKg': 'Of the whole dish',
  'cooking.term.portions': 'Portions of this cooking', 'cooking.term.allPortions': 'All portions', 'cooking.term.litre': 'Room of a kilogram', 'cooking.term.litres': 'Most in the pot', 'cooking.term.usable': 'Largest pot takes',
  'cooking.term.potEach': 'A pot for each cooking', 'cooking.term.pots': 'Pots', 'cooking.term.span': 'Time to cook in', 'cooking.term.potFrom': 'The first may be put on', 'cooking.method.potEach': 'From the steps of the recipes that stand in a pot.', 'cooking.method.pots': 'The pots listed in Kitchen.',
  'cooking.term.until': 'Last portion', 'cooking.term.from': 'First portion', 'cooking.term.ready': 'Ready', 'cooking.term.noPot': 'Pots', 'cooking.term.portionsOfEach': 'Portions of each cooking',
  'cooking.method.weights': 'From the dish and its ingredients.', 'cooking.method.servings': 'From the portions wanted in each minute and the keeping time.', 'cooking.method.day': 'Found with the plan of the day.',
  'cooking.title': 'Pots, cookings and bowls', 'cooking.lead': 'How often each dish of the meal is cooked, in which pots, and how it is put out.', 'cooking.measured': 'Measured', 'cooking.limit': 'limit', 'cooking.method.noPot': 'The kitchen lists no pot.',
  'cooking.say.noPot': (p: { dish: string; litres: number }, f: Formats) => `${p.dish} needs a pot for ${litres(p.litres, f)}, and the kitchen names none.`,
  'cooking.say.goes': (p: { dish: string; litres: number; usable: number; goes: number; after: number; each: AmountWords; pots: readonly string[] }, f: Formats) =>
    `${p.dish} takes ${litres(p.litres, f)} at its fullest; the largest pot takes ${litres(p.usable, f)}. It is cooked in ${f.number(p.goes)} goes of about ${f.amount(p.each)}${p.pots.length > 0 ? ` in ${f.list(p.pots)}` : ''}${p.after > 1 ? ', one after another; keep each hot, with a lid on, in another vessel' : ''}.`,
  'cooking.say.cookedOften': (p: { dish: string; served: number; keeps: number; times: number; most: AmountWords; at: readonly number[] }, f: Formats) =>
    `${p.dish} is served for ${f.duration(p.served)} and keeps ${f.duration(p.keeps)}. It is cooked ${often(p.times, f)}, at most ${f.amount(p.most)} at a time, for ${f.list(p.at.map((m) => f.clock(m)))}.`,
  'cooking.say.madeOften': (p: { dish: string; served: number; keeps: number; times: number; most: AmountWords; at: readonly number[] }, f: Formats) =>
    `${p.dish} is served for ${f.duration(p.served)} and keeps ${f.duration(p.keeps)} in the fridge. It is made ${often(p.times, f)}, at most ${f.amount(p.most)} at a time, for ${f.list(p.at.map((m) => f.clock(m)))}.`,
  'cooking.say.potTime': (p: { dishes: readonly string[]; wanted: number; there: number; pots: number }, f: Formats) =>
    `${f.list(p.dishes)} want a pot for ${f.duration(Math.round(p.wanted))} in all; the ${f.plural(p.pots, 'one pot is', `${f.number(p.pots)} pots are`)} there for ${f.duration(Math.round(p.there))}. That is more than there is.`,
  'cooking.say.bowls': (p: { dish: string; bowls: number; stands: number; most: AmountWords }, f: Formats) =>
    `${p.dish} stands on the table for at most ${f.duration(p.stands)}: put it out in ${f.number(p.bowls)} fresh ${isLiquid(p.most) ? 'jugs' : 'bowls'} of at most ${f.amount(p.most)}, and keep the rest in the fridge.`,
  'cooking.say.stood': (p: { dish: string; turn: number; ready: number; until: number; minutes: number; keeps: number }, f: Formats) =>
    `${p.dish} for ${f.clock(p.until)} is ready at ${f.clock(p.ready)}: it stands ${f.duration(p.minutes)} and keeps ${f.duration(p.keeps)}. The day has no better place for it.`,
  'cooking.way.window': (p: { dish: string; from: number; to: number }, f: Formats) => `Serve ${p.dish} only from ${f.clock(p.from)} to ${f.clock(p.to)}, when most guests would eat it: it is then cooked once.`,
  'cooking.way.windowMade': (p: { dish: string; from: number; to: number }, f: Formats) => `Serve ${p.dish} only from ${f.clock(p.from)} to ${f.clock(p.to)}, when most guests would eat it: it is then made once.`,
  'cooking.way.hold': (p: { dish: string; celsius: number; minutes: number; times: number }, f: Formats) => `Keep ${p.dish} at ${f.degrees(p.celsius)} or hotter in something that heats: it is then good for ${f.duration(p.minutes)} and cooked ${p.times === 1 ? 'once' : often(p.times, f)}.`,
  'cooking.way.ice': (p: { dish: string; celsius: number }, f: Formats) => `Stand ${p.dish} on ice at ${f.degrees(p.celsius)} or colder, and say so where it waits: its bowl need not be changed.`,
  'cooking.way.borrow': (p: { litres: number }, f: Formats) => `Borrow a pot of ${f.number(p.litres)} L or more.`,
  'cooking.way.pots': (p: { more: number }, f: Formats) => `Borrow ${f.plural(p.more, 'one more pot', `${f.number(p.more)} more pots`)} of the same size.`,
  'cooking.way.shorter': 'Serve the meal in a shorter time, so that it is cooked less often, or keep it hot in something that heats.',
  'cooking.way.less': (p: { dish: string; portions: number }, f: Formats) => `Make less of ${p.dish}: ${f.plural(p.portions, '1 portion fits', `${f.number(p.portions)} portions fit`)} in the largest pot.`,
  'timeline.task.freshBowls': (p: { bowls: readonly { readonly dish: string; readonly amount: AmountWords; readonly number: number; readonly of: number }[] }, f: Formats) =>
    `Put out fresh, take the old away: ${f.list(p.bowls.map((b) => `${b.dish}, ${f.amount(b.amount)} (${f.number(b.number)} of ${f.number(b.of)})`))}`,
} as const satisfies Record<string, Entry>;
