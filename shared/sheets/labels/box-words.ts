import { amountOf, scaleAmount } from '../../measure';
import { say, type Formats } from '../../words';
import { amountWords } from '../amounts';
import { shiftDay } from '../calendar';
import { clockInDay } from '../day/by-day';
import { foodTitle, midSentence } from '../food-name';
import type { SheetContext } from '../types';
import { inPieces, type KeptThing } from './kept-things';

/** Foods named on a label; the rest are counted. */
const mostFoods = 2;

/** "Spinach and spring onions" for a part, the dish's name for the whole. */
export function keptWhat({ dish, foods }: KeptThing, { formats: f, names }: Pick<SheetContext, 'formats' | 'names'>): string {
  if (foods === null) return dish.name;
  const said = foods.slice(0, foods.length > mostFoods + 1 ? mostFoods : foods.length).map((id, at) => { const name = foodTitle(names.ingredient(id)); return at === 0 ? name : midSentence(name); });
  return f.list([...said, ...(said.length < foods.length ? [say(f, 'sheets.boxes.moreFoods', { n: foods.length - said.length })] : [])]);
}

/** From here on the clock time is left out: minutes, two days. */
const datedFrom = 2880;

/** The day it is good until; with its clock time when it does not keep for two days. */
export function keptUntil(thing: Pick<KeptThing, 'madeAt' | 'useBy'>, day: string, f: Formats): string {
  const date = f.date(shiftDay(day, Math.floor(thing.useBy / 1440)));
  return thing.useBy - thing.madeAt >= datedFrom ? date : `${date}, ${clockInDay(f, thing.useBy)}`;
}

/** "3 boxes of 2 L", "4 bags". */
export function boxCount({ boxes }: KeptThing, f: Formats): string {
  return say(f, 'sheets.boxes.count', { n: boxes.count.value, bags: boxes.boxLitres === null, size: boxes.boxLitres === null ? null : amountWords(f, boxes.boxLitres < 1 ? amountOf(boxes.boxLitres * 1000, 'ml') : amountOf(boxes.boxLitres, 'L')) });
}

/** All of a thing: "1.6 kg", of what has been soaked "1.6 kg dry". */
export const keptAmount = (thing: KeptThing, f: Formats): string => (thing.soaked ? say(f, 'sheets.boxes.dryWeight', { amount: amountWords(f, thing.amount) }) : amountWords(f, thing.amount));

/** What is in one box, when all hold alike: "about 700 g". Pieces are told as they are put in, the last bag holding the rest. */
export function boxAmount(thing: KeptThing, at: number, f: Formats): string {
  const count = thing.boxes.count.value;
  if (!inPieces(thing)) {
    const amount = count === 1 ? amountWords(f, thing.amount) : say(f, 'sheets.boxes.about', { amount: amountWords(f, scaleAmount(thing.amount, 1 / count)) });
    return thing.soaked ? say(f, 'sheets.boxes.drySoaked', { amount }) : amount;
  }
  const total = Math.round(thing.amount.amount.toNumber());
  const each = Math.ceil(total / count);
  return amountWords(f, amountOf(Math.max(1, Math.min(each, total - (at - 1) * each)), 'piece'));
}
