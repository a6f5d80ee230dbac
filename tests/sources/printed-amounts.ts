/** Amounts as published tables print them: "1 1/2 gal 1 cup", "4 lb 5 1/2 oz". */
import { convert, dimensionOf, parseAmount, type Amount, type UnitId } from '../../shared/measure';

const unitNames: Readonly<Record<string, UnitId>> = {
  g: 'g', kg: 'kg', oz: 'oz', lb: 'lb', tsp: 'tsp', tbsp: 'tbsp', cup: 'cup', cups: 'cup', pt: 'pint', qt: 'quart', gal: 'gallon', ml: 'ml', l: 'L',
  'fl oz': 'floz', each: 'piece', piece: 'piece', pieces: 'piece', can: 'piece', cans: 'piece', clove: 'clove', cloves: 'clove',
};

/** Reads "1 1/2 gal 1 cup" as printed; null when a word is no unit. */
export function readPrinted(text: unknown): Amount | null {
  if (typeof text !== 'string') return null;
  const parts = [...text.matchAll(/(\d+(?: \d+\/\d+)?|\d+\/\d+|\d+\.\d+)\s*(fl oz|[a-zA-Z]+)/g)];
  let sum: Amount | null = null;
  let used = '';
  for (const [whole, number = '', name = ''] of parts) {
    const [value, unit] = [parseAmount(number), unitNames[name]];
    if (value === null || unit === undefined) return null;
    if (sum !== null && dimensionOf(sum.unit) !== dimensionOf(unit)) return null;
    const part: Amount = { amount: value, unit };
    sum = sum === null ? part : { amount: sum.amount.plus(convert(part, sum.unit).amount), unit: sum.unit };
    used += whole;
  }
  return used.replaceAll(' ', '') === text.replaceAll(' ', '') ? sum : null;
}
