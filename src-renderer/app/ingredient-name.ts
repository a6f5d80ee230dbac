import { ingredient } from '../../shared/reference';

/** The name of an ingredient; an unknown id comes back readable. */
export const ingredientName = (id: string): string => ingredient(id)?.name ?? id.replaceAll('-', ' ');
