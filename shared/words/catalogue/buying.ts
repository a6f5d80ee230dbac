import type { AmountWords, Entry, Formats } from '../formats';

/** Words of the subject `buying`. */
export const buyingWords = {
  'rule.buying.asPurchased': 'As bought: the amount ready to use, turned into the unit of the shopping list, and made larger for what is lost in trimming.',
  'rule.buying.need': 'Needed: what each dish uses, added up. Things that are counted are bought whole, so the list shows the next whole one.',
  'buying.term.edible': 'ready to use, in the recipe\u2019s measure',
  'buying.term.perUnit': (p: { from: string; to: string }) => `${p.to} in one ${p.from} of it`,
  'buying.term.ediblePercent': 'part left after trimming',
  'buying.notCounted': (p: { name: string; held: AmountWords; listUnit: string }, f: Formats) =>
    `${p.name}: ${f.amount(p.held)} in the house cannot be counted, for the list is in ${p.listUnit} and the table does not know what that comes to. Enter it in ${p.listUnit}, or take it off what you buy.`,
  'buying.term.fryingOil': 'oil of the pans',
} as const satisfies Record<string, Entry>;
