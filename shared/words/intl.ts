import { catalogueLanguage } from './catalogue/units';

// Intl objects take about a tenth of a millisecond each to build: they are made once per locale and kept.
const numberFormats = new Map<string, Intl.NumberFormat>();
const plurals = new Intl.PluralRules(catalogueLanguage);
const lists = new Intl.ListFormat(catalogueLanguage, { style: 'long', type: 'conjunction' });

function kept(key: string, make: () => Intl.NumberFormat): Intl.NumberFormat {
  const had = numberFormats.get(key);
  if (had !== undefined) return had;
  const made = make();
  numberFormats.set(key, made);
  return made;
}

/** The locale itself when it is well formed, else the catalogue's own language. */
export function knownLocale(locale: string): string {
  try {
    return Intl.getCanonicalLocales(locale)[0] ?? catalogueLanguage;
  } catch {
    return catalogueLanguage;
  }
}

/** Formats numbers with at most so many decimals (0-20). */
export const decimalFormat = (locale: string, decimals: number): Intl.NumberFormat =>
  kept(`${locale} ${decimals}`, () => new Intl.NumberFormat(locale, { maximumFractionDigits: decimals, useGrouping: true }));

/** Formats money of a three-letter currency. */
export const moneyFormat = (locale: string, currency: string): Intl.NumberFormat =>
  kept(`${locale} ${currency}`, () => new Intl.NumberFormat(locale, { style: 'currency', currency }));

/** True when the catalogue's language uses the singular for this count. */
export const isSingular = (count: number): boolean => plurals.select(count) === 'one';

/** "a, b and c" in the catalogue's language. */
export const listText = (items: readonly string[]): string => lists.format(items);
