import { roleIds, type Event, type Recipe, type RoleId } from '../../../../shared/event';
import { knownWeight, readAmount, toRecipe, type ImportedRecipe, type KnownWeight, type StepTime } from '../../../../shared/exchange';
import { amountText, parseAmount, type AmountText } from '../../../../shared/measure';
import type { Message } from '../../../../shared/words';
import { keptLines, openLines, type LineAnswer } from './line-answer';
import { freeId } from './put-on-menu';

/** What the cook fills in beside the lines. */
export interface SettleForm {
  readonly name: string;
  readonly role: string;
  readonly portions: string;
  /** What it makes in all, as typed; empty takes the weight of what goes in. */
  readonly made: string;
}

/** A field of the form, for the sentence beside it. */
export type FormField = 'name' | 'role' | 'portions' | 'made' | 'lines';
/** What is missing, by field. */
export type FormProblems = Readonly<Partial<Record<FormField, Message>>>;

/** What the recipe says of itself; nothing is guessed. A range starts from its lower end. */
export function firstForm({ name, yield: made }: ImportedRecipe, entry: (amount: AmountText) => string): SettleForm {
  return {
    name, role: '', portions: made.portions === undefined ? '' : String(made.portions.low.toNumber()),
    made: made.made === undefined ? '' : entry(amountText({ amount: made.made.amount.low, unit: made.made.unit })),
  };
}

/** The weight of the settled lines, for a yield nobody wrote; null when none can be weighed. */
export const weighed = (answers: readonly LineAnswer[]): KnownWeight | null => knownWeight(keptLines(answers));

const roleOf = (text: string): RoleId | undefined => roleIds.find((id) => id === text);

/** The recipe, or what is missing and at which field. */
export function finish(event: Event, imported: ImportedRecipe, answers: readonly LineAnswer[], form: SettleForm, steps?: readonly StepTime[]): { readonly recipe: Recipe } | { readonly problems: FormProblems } {
  const portions = parseAmount(form.portions)?.toNumber() ?? 0;
  const amount = form.made.trim() === '' ? (weighed(answers)?.amount ?? null) : readAmount(form.made);
  const role = roleOf(form.role);
  const open = openLines(answers);
  const name = form.name.trim();
  const lines: Message | null = open > 0 ? { id: 'view.recipes.needsSettled', params: { n: open } } : keptLines(answers).length === 0 ? { id: 'view.recipes.needsLines' } : null;
  const problems: FormProblems = {
    ...(name === '' ? { name: { id: 'view.recipes.needsName' } } : {}),
    ...(role === undefined ? { role: { id: 'view.recipes.needsRole' } } : {}),
    ...(portions > 0 ? {} : { portions: { id: 'view.recipes.needsPortions' } }),
    ...(amount === null && lines === null ? { made: { id: 'view.recipes.needsYield' } } : {}),
    ...(lines === null ? {} : { lines }),
  };
  if (role === undefined || amount === null || Object.keys(problems).length > 0) return { problems };
  const made = toRecipe({ ...imported, lines: answers.map(({ proposal }) => proposal.line) }, {
    id: freeId(event.recipes, name), name, role, yield: { amount, portions }, lines: answers.map(({ settled }) => settled),
    ...(steps === undefined ? {} : { steps }),
  });
  return made.ok ? { recipe: made.recipe } : { problems: { lines: made.open[0]?.message ?? { id: 'view.recipes.needsLines' } } };
}
