import type { ImportedRecipe } from '../../../../shared/exchange';

/** A page of the view Menu that stands in place of the dishes. */
export type RecipePage =
  | { readonly kind: 'choose' }
  | { readonly kind: 'paste' }
  /** A recipe being taken in; an empty one is written by hand. */
  | { readonly kind: 'settle'; readonly imported: ImportedRecipe }
  | { readonly kind: 'edit'; readonly recipe: string };

/** Goes to a page, or with null back to the dishes. */
export type GoTo = (page: RecipePage | null) => void;

/** A recipe with nothing in it. */
export const blankRecipe: ImportedRecipe = { name: '', yield: { texts: [] }, lines: [], steps: [], minutes: {}, description: '', source: '' };
