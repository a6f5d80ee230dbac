import type { UnitId } from '../measure';
import type { Message } from '../words';
import type { LineAmount, ReadLine } from './line/types';

/** How much a foreign recipe makes, as far as it says so. */
export interface ImportedYield {
  /** As it was written, every wording. */
  readonly texts: readonly string[];
  /** Portions, servings, people served. */
  readonly portions?: LineAmount;
  /** Weight, measure or number of things made: "3 kg", "24 biscuits". */
  readonly made?: { readonly amount: LineAmount; readonly unit: UnitId; readonly word: string };
}

/** One step of the instructions; `section` is the heading it stands under. */
export interface ImportedStep {
  readonly text: string;
  readonly section?: string;
}

/** A foreign recipe as read, before the cook has settled what is open. */
export interface ImportedRecipe {
  readonly name: string;
  readonly yield: ImportedYield;
  /** Ingredient lines in their order, read or not. */
  readonly lines: readonly ReadLine[];
  readonly steps: readonly ImportedStep[];
  /** Minutes of preparation, cooking and in all, as far as given. */
  readonly minutes: { readonly prepare?: number; readonly cook?: number; readonly total?: number };
  readonly description: string;
  /** Author and address, as given; empty when neither is. */
  readonly source: string;
}

/** Something of a pasted text that could not be used. `recipe`: number of the recipe in the list, from 0; null when it concerns the whole text. */
export interface ImportProblem {
  readonly recipe: number | null;
  readonly message: Message;
}
