import { readIngredientLine, readRecipes, readYield, type ImportedRecipe } from '../../../../shared/exchange';
import type { Message } from '../../../../shared/words';

const method = /^(?:method|directions?|instructions?|preparation|steps?|to make)\s*:?$/i;
const heading = /^ingredients?\s*:?$/i;
const makes = /^(?:serves|makes|yields?|servings?|portions?|feeds)\b/i;
const numbered = /^(?:step )?\d{1,2}[.)]\s+(?=\p{L})/iu;

/** Most letters of a text read line by line; longer ones are no recipe somebody typed. */
const longest = 20_000;
const longestName = 120;
const longestLine = 400;

const looksWritten = (text: string): boolean => text.length <= longest && !/[<>{}]/.test(text);

/**
 * A recipe typed as plain lines: its name, perhaps how much it makes, ingredients one a line, and after a line such as "Method" the steps.
 * Every line comes back as a name, an ingredient line, a step or the yield; none is dropped.
 */
function typed(text: string): ImportedRecipe | null {
  const lines = text.split(/\r\n|\n|\r/).map((line) => line.trim()).filter((line) => line !== '' && !heading.test(line));
  const [name, ...rest] = lines;
  if (name === undefined || rest.length === 0 || name.length > longestName || lines.some((line) => line.length > longestLine * 5)) return null;
  const at = rest.findIndex((line) => method.test(line));
  const firstStep = at < 0 ? rest.findIndex((line) => numbered.test(line)) : at;
  const before = firstStep < 0 ? rest : rest.slice(0, firstStep);
  const after = firstStep < 0 ? [] : rest.slice(at < 0 ? firstStep : firstStep + 1);
  const yields = before.filter((line) => makes.test(line));
  return {
    name, yield: readYield(yields), lines: before.filter((line) => !makes.test(line)).map(readIngredientLine),
    steps: after.map((line) => ({ text: line.replace(numbered, '') })), minutes: {}, description: '', source: '',
  };
}

/** What is found in a pasted text. */
export interface PastedRecipes {
  readonly recipes: readonly ImportedRecipe[];
  readonly problems: readonly Message[];
}

/** Recipes of a saved page, of JSON-LD, or of plain lines. */
export function pastedRecipes(text: string): PastedRecipes {
  const { recipes, problems } = readRecipes(text);
  if (recipes.length > 0) return { recipes, problems: problems.filter((p) => p.recipe === null).map((p) => p.message) };
  const plain = looksWritten(text) ? typed(text) : null;
  return plain === null ? { recipes: [], problems: problems.map((p) => p.message) } : { recipes: [plain], problems: [] };
}
