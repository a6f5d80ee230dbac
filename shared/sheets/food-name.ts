/** A name inside a sentence: small first letter, unless the second is a capital too (an abbreviation). */
export const midSentence = (name: string): string => (/^.\p{Lu}/u.test(name) ? name : name.charAt(0).toLowerCase() + name.slice(1));

/** What follows the comma and stands behind the word it belongs to: "cardamom pods", not "pods cardamom". */
const behind: ReadonlySet<string> = new Set(['pods', 'sticks', 'fillet', 'fillets', 'leaves', 'seeds']);

const single = (plural: string): string => plural.replace(/ies$/, 'y').replace(/([^s])s$/, '$1');

/**
 * The name of a food as a cook says it beside an amount that goes into a dish: "Salt, fine" becomes "fine salt", "Lemons, for juice" becomes
 * "lemon juice". A name without a comma, or with more behind it than two words a part, only gets its small first letter.
 */
export function foodName(name: string): string {
  const [head = '', ...parts] = name.split(', ');
  if (parts.length === 0 || parts.length > 3 || parts.some((part) => part.split(' ').length > 2)) return midSentence(name);
  const food = midSentence(head);
  const [only = ''] = parts;
  if (parts.length === 1 && only.startsWith('for ')) return `${single(food)} ${only.slice(4)}`;
  if (parts.length === 1 && behind.has(only)) return `${food} ${only}`;
  return [...parts.toReversed().map((part) => part.replace(/^used /, '')), food].join(' ');
}

/** The same at the head of a line: "Fine salt". */
export function foodTitle(name: string): string {
  const food = foodName(name);
  return food.charAt(0).toUpperCase() + food.slice(1);
}
