/** The words of a line behind its amount, taken apart. */
export interface Described {
  readonly item: string;
  readonly preparation: string;
  readonly toTaste: boolean;
}

const taste = /[,;]?\s*\(?\b(?:or |plus (?:extra|more),? )?(?:(?:adjusted? )?to taste|to your taste|according to taste|as (?:needed|required|desired|necessary)|q\. ?s\.)\)?/i;
/** Words that describe the food named after a comma: "boneless, skinless chicken thighs". */
const adjectives = new Set(['boneless', 'skinless', 'bone-in', 'skin-on', 'large', 'small', 'medium', 'ripe', 'fresh', 'dried', 'cold', 'warm', 'hot', 'raw', 'cooked',
  'unsalted', 'salted', 'lean', 'organic', 'frozen', 'firm', 'soft', 'whole', 'sweet', 'red', 'green', 'yellow', 'white', 'brown', 'black', 'unsweetened', 'sweetened', 'good-quality', 'full-fat', 'low-fat']);
const purposes = /^(.*\S) (for (?:the |deep[- ]?|shallow[- ]?)?(?:frying|dusting|greasing|brushing|serving|garnish(?:ing)?|rolling|sprinkling|drizzling|topping|kneading|coating|pan|tin)\b.*|to (?:serve|garnish|finish|decorate|cover|top)\b.*)$/i;

const onlyAdjectives = (text: string): boolean => text.toLowerCase().split(/ (?:and )?/).every((word) => adjectives.has(word));

/** Where the preparation begins: a comma, a semicolon or a dash between spaces. */
function splitAt(text: string): number {
  const dash = /(?: [-–—] |;|,(?!\d))/g;
  for (;;) {
    const found = dash.exec(text);
    if (found === null) return -1;
    if (!(found[0] === ',' && onlyAdjectives(text.slice(0, found.index).trim()))) return found.index;
  }
}

const edges = (text: string): string => text.replace(/^[\s,;:.–—-]+(?=\D|$)/, '').replace(/[\s,;:–—-]+$/, '').trim();

/** Splits "flour, sifted", "oil for frying", "salt, to taste" into food, preparation and "to taste". No word is lost but those of "to taste". */
export function describe(text: string): Described {
  const phrase = taste.exec(text)?.[0];
  const needed = /as (?:needed|required|desired|necessary)/i.exec(phrase ?? '')?.[0];
  const parts = apart(edges(phrase === undefined ? text : text.replace(phrase, '')).replace(/^of (?:the |an? )?/i, ''));
  return { item: parts.item, preparation: [parts.preparation, needed].filter((part) => part !== undefined && part !== '').join(', '), toTaste: phrase !== undefined };
}

function apart(rest: string): Omit<Described, 'toTaste'> {
  const at = splitAt(rest);
  const head = edges(at < 0 ? rest : rest.slice(0, at));
  const tail = at < 0 ? '' : edges(rest.slice(at + 1));
  const purpose = purposes.exec(head);
  if (purpose === null) return { item: head, preparation: tail };
  return { item: edges(purpose[1] ?? ''), preparation: [purpose[2], tail].filter((part) => part !== undefined && part !== '').join(', ') };
}

const harmless = [
  /\d+(?:[.,]\d+)? ?(?:%|percent\b)/gi,
  /(?:\d+ )?[\d/⁄.,]*[\d¼½¾⅓⅔](?: ?(?:-|–|x|×|by|to) ?[\d/⁄.,¼½¾]+)?[ -]?(?:inch(?:es)?\b|in\.|cm\b|mm\b|["″”])/gi,
  /\b0+\b/g,
  /\b(?:type|no\.?|size|grade|number) ?#?\d+/gi,
  /\d+ ?°(?: ?[CF]\b)?/gi,
  /\d+(?: ?(?:-|–|to) ?\d+)? ?(?:minutes?|mins?|hours?|hrs?|days?)\b/gi,
  /\b(?:into|in) (?:about )?\d+(?: ?(?:-|–|to|or) ?\d+)?\b(?! ?(?:g|kg|ml|oz|lb|cups?|tbsp|tsp)\b)/gi,
];

/** True when numbers are left that may be an amount nobody has counted. Percent, sizes in inches, oven degrees and minutes are none. */
export const hasOpenNumber = (text: string): boolean => /\p{N}/u.test(harmless.reduce((left, pattern) => left.replace(pattern, ' '), text));
