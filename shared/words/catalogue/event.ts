import type { Entry } from '../formats';
import { whereText, type Where } from './fields';

/** Where a wrong value stands, and what it says (already shortened for reading). */
export interface WrongValue { readonly where: Where; readonly got: string }
const at = (where: Where, rest: string): string => {
  const place = whereText(where);
  return place === '' ? `The event: ${rest}` : `${place}: ${rest}`;
};

/** How to mend a value that has the wrong form or order; the schema names these ids. */
const hints = {
  id: 'Use letters, digits, dashes and underscores, at most 64, such as "early-wave".',
  decimal: 'Write a plain number in quotation marks, such as "2.5".',
  name: 'Give it a name.',
  day: 'Write the day as 2026-12-12.',
  noSuchDay: 'There is no such day; look at the month and the day.',
  currency: 'Write three capital letters, such as EUR.',
  version: 'Write one or two capital letters.',
} as const;
const orders = {
  coolTestOrder: 'Hot water left to stand ends cooler than it began and warmer than the room. Enter the two readings in that order.',
  closesBeforeOpens: 'It closes before it opens. Put the closing time after the opening time; past midnight counts on from 24:00.',
  endsBeforeBegins: 'It ends before it begins. Put the end after the start; past midnight counts on from 24:00.',
  stayOrder: 'Put the stays in order: shortest, usual, longest.',
  rangeOrder: 'Put the guesses in order: fewest, most likely, most.',
  zeroAmount: 'The amount is 0. Write more than 0.',
  panRim: 'The width at the rim is missing. Measure across the top of the pan in millimetres.',
  panSides: 'Length and width are missing. Measure the pan in millimetres.',
  circle: 'The steps wait for each other in a circle. Take one of the "steps before it" out.',
} as const;
const hintOf = (table: Readonly<Record<string, string>>, id: string): string => (Object.hasOwn(table, id) ? (table[id] ?? '') : '');

/** Words of the subject `event`: what is wrong with an event file, where, and how to mend it. */
export const eventWords = {
  'event.missing': (p: { readonly where: Where }) => at(p.where, 'this is missing. Add it.'),
  'event.needsNumber': (p: WrongValue) => at(p.where, `a number belongs here, not ${p.got}. Write it with digits and without quotation marks.`),
  'event.needsWhole': (p: WrongValue) => at(p.where, `${p.got} is not a whole number. Write it without decimals.`),
  'event.needsText': (p: WrongValue) => at(p.where, `text in quotation marks belongs here, not ${p.got}.`),
  'event.needsYesNo': (p: WrongValue) => at(p.where, `true or false belongs here, not ${p.got}.`),
  'event.needsList': (p: WrongValue) => at(p.where, `a list in square brackets belongs here, not ${p.got}.`),
  'event.needsGroup': (p: WrongValue) => at(p.where, `a group in curly brackets belongs here, not ${p.got}.`),
  'event.tooSmall': (p: WrongValue & { readonly least: number }, f) => at(p.where, `${p.got} is too small. Write ${f.number(p.least, 3)} or more.`),
  'event.tooLarge': (p: WrongValue & { readonly most: number }, f) => at(p.where, `${p.got} is too large. Write ${f.number(p.most, 3)} or less.`),
  'event.tooEarly': (p: WrongValue & { readonly least: number }, f) => at(p.where, `the time is too early (${p.got} minutes from midnight). The earliest is ${f.clock(p.least)}.`),
  'event.tooLate': (p: WrongValue & { readonly most: number }, f) => at(p.where, `the time is too late (${p.got} minutes from midnight). The latest is ${f.clock(p.most)}.`),
  'event.tooFew': (p: { readonly where: Where; readonly least: number }, f) => at(p.where, `at least ${f.number(p.least)} must be there. Add one.`),
  'event.tooMany': (p: { readonly where: Where; readonly most: number }, f) => at(p.where, `there are too many. At most ${f.number(p.most)} fit; take some out.`),
  'event.tooLongText': (p: { readonly where: Where; readonly most: number }, f) => at(p.where, `the text is too long. Shorten it to ${f.number(p.most)} letters.`),
  'event.notOneOf': (p: WrongValue & { readonly allowed: readonly string[] }) => at(p.where, `${p.got} is not known here. Use one of these: ${p.allowed.join(', ')}.`),
  'event.wrongForm': (p: WrongValue & { readonly hint: string }) => at(p.where, `${p.got} does not fit. ${hintOf(hints, p.hint)}`.trimEnd()),
  'event.wrongOrder': (p: { readonly where: Where; readonly hint: string }) => at(p.where, hintOf(orders, p.hint)),
  'event.houseRange': (p: { readonly number: number; readonly label: string; readonly got: number; readonly unit: string; readonly least: number; readonly most: number; readonly usual: number | null }, f) => {
    const unit = p.unit === '' ? '' : ` ${p.unit}`;
    const back = p.usual === null ? '' : `, or take the figure out to go back to ${f.number(p.usual, 4)}`;
    return `House figure ${f.number(p.number)}, ${p.label}: ${p.got}${unit} is too ${p.got < p.least ? 'small' : 'large'}. Write ${f.number(p.least, 4)} to ${f.number(p.most, 4)}${unit}${back}.`;
  },
  'event.twice': (p: { readonly where: Where; readonly id: string }) => at(p.where, `the short name "${p.id}" is used twice in this list. Give one of them another.`),
  'event.notThere': (p: { readonly where: Where; readonly id: string; readonly among: string }) => at(p.where, `"${p.id}" is not among the ${whereText([{ key: p.among }]).toLowerCase()} of this event. Add it there, or name one that is there.`),
  'event.other': (p: { readonly where: Where; readonly got: string }) => at(p.where, `${p.got} does not fit here. Look at the same field of another event.`),
  'event.more': (p: { readonly count: number }, f) => `${f.number(p.count)} more ${f.plural(p.count, 'thing does', 'things do')} not fit. Mend those above first.`,

  'event.empty': 'The file is empty. Open the copy that ends in .bak, if there is one.',
  'event.tooLong': (p: { readonly most: number }, f) => `The file is longer than ${f.number(p.most / 1_000_000)} million letters. It is not an event, or something was pasted into it.`,
  'event.tooDeep': (p: { readonly most: number; readonly line: number }, f) => `Line ${f.number(p.line)}: brackets stand inside each other more than ${f.number(p.most)} deep. This is not an event file.`,
  'event.syntax': (p: { readonly line: number; readonly column: number; readonly near: string }, f) => p.near === ''
    ? `Line ${f.number(p.line)}: the file ends too early. A bracket or a quotation mark is not closed; part of the file may be missing. Open the copy that ends in .bak, if there is one.`
    : `Line ${f.number(p.line)}, letter ${f.number(p.column)}: the file cannot be read from "${p.near}" on. Look for a missing comma, bracket or quotation mark just before it.`,
  'event.notAnEvent': (p: { readonly got: string }) => `This file is not an event. Its first field must be "format": "brimful-event/1"; it has ${p.got}.`,
  'event.newerUnreadable': (p: { readonly format: string }) => `This event was written by a newer version (${p.format}), and this one cannot read all of it. Open it with the newer version.`,

  'event.note.newer': (p: { readonly format: string }) => `This event was written by a newer version (${p.format}). You can read and print it here; it cannot be saved, so that nothing is lost.`,
  'event.note.upgraded': (p: { readonly from: string }) => `This event was written by an older version (${p.from}). It is brought up to date when you save it.`,
  'event.note.dropped': (p: { readonly count: number }, f) => `${f.number(p.count)} ${f.plural(p.count, 'field', 'fields')} with the unusable name "__proto__" ${f.plural(p.count, 'was', 'were')} left out.`,

  'event.note.idleFigures': (p: { readonly figures: readonly string[]; readonly more: number }, f) =>
    `Nothing is worked out from ${f.list([...p.figures.map((key) => `"${key}"`), ...(p.more === 0 ? [] : [`${f.number(p.more)} more`])])}. ${f.plural(p.figures.length, 'This house figure is', 'These house figures are')} kept without effect; look at the spelling.`,

  'event.got.nothing': 'nothing',
  'event.got.number': 'the number',
  'event.got.list': 'a list',
  'event.got.group': 'a group',
  'event.new.wave': 'All guests',
  'event.new.burner': 'Burner 1',
  'event.new.cook': 'Cook',
  'event.new.title': 'New event',
} as const satisfies Record<string, Entry>;
