import { plainText } from './line/tidy';
import { field, isGroup, isOfType, listOf, type JsonGroup } from './recipe-graph';
import type { ImportedStep } from './recipe-types';

const duration = /^P(?:(\d+(?:[.,]\d+)?)W)?(?:(\d+(?:[.,]\d+)?)D)?(?:T(?:(\d+(?:[.,]\d+)?)H)?(?:(\d+(?:[.,]\d+)?)M)?(?:(\d+(?:[.,]\d+)?)S)?)?$/i;

/** Minutes of an ISO 8601 duration such as `PT1H30M`; null when it is none. Years and months have no fixed length and are not read. Source: ISO 8601-1, 5.5.2. */
export function minutesOf(text: string): number | null {
  const parts = duration.exec(text.trim());
  if (parts === null || !/\d/.test(text)) return null;
  const [weeks = 0, days = 0, hours = 0, minutes = 0, seconds = 0] = parts.slice(1).map((part) => Number((part ?? '0').replace(',', '.')));
  const total = weeks * 10080 + days * 1440 + hours * 60 + minutes + seconds / 60;
  return Number.isFinite(total) && total <= 525_600 ? total : null;
}

/** A text field, also given as `{"@value": …}` or in a list; empty when there is none. */
export function textOf(raw: unknown): string {
  const [first] = listOf(raw);
  if (typeof first === 'string') return plainText(first).replace(/\s+/g, ' ');
  if (typeof first === 'number') return String(first);
  return isGroup(first) ? textOf(field(first, '@value') ?? field(first, 'name') ?? field(first, 'url') ?? field(first, '@id')) : '';
}

/** Tags that end a line become line ends before the others go. */
const paragraphs = (text: string): string[] =>
  text.replace(/<(?:br|\/p|\/li|\/div|\/h\d)\b[^<>]*>/gi, '\n').split(/\r\n|\n|\r/).map((line) => plainText(line).replace(/\s+/g, ' ')).filter((line) => line !== '');

/** An ingredient given as a group (amount and unit in fields of their own) as one line of text. */
function groupLine(group: JsonGroup): string {
  const quantity = field(group, 'requiredQuantity') ?? field(group, 'amount') ?? field(group, 'quantity') ?? field(group, 'value');
  const value = isGroup(quantity) ? textOf(field(quantity, 'value')) : textOf(quantity);
  const unit = textOf(field(group, 'unitText') ?? field(group, 'unit') ?? (isGroup(quantity) ? (field(quantity, 'unitText') ?? field(quantity, 'unitCode')) : undefined));
  const name = textOf(field(group, 'name') ?? field(group, 'text') ?? field(group, 'ingredient') ?? field(group, 'item'));
  return [value, unit, name].filter((part) => part !== '').join(' ');
}

/** Ingredient lines as text, in their order. What is neither text nor a readable group comes as its JSON, so that it is seen and not lost. */
export function ingredientTexts(recipe: JsonGroup): string[] {
  const raw = [...listOf(field(recipe, 'recipeIngredient')), ...(listOf(field(recipe, 'recipeIngredient')).length > 0 ? [] : listOf(field(recipe, 'ingredients')))];
  return raw.flatMap((one): string[] => {
    if (typeof one === 'string') return one.split(/\r\n|\n|\r|<br\s*\/?>/i).filter((line) => plainText(line) !== '');
    if (Array.isArray(one)) return one.filter((inner) => typeof inner === 'string');
    if (one === null || one === undefined) return [];
    const line = isGroup(one) ? groupLine(one) : textOf(one);
    return [line === '' ? JSON.stringify(one).slice(0, 400) : line];
  });
}

const withSection = (text: string, section: string): ImportedStep => ({ text, ...(section === '' ? {} : { section }) });

/** Steps of the instructions: a text, a list of texts, HowToStep, HowToSection with its own steps, an ItemList. */
export function stepsOf(raw: unknown, section = '', depth = 0): ImportedStep[] {
  if (depth > 8) return [];
  return listOf(raw).flatMap((one): ImportedStep[] => {
    if (typeof one === 'string') return paragraphs(one).map((text) => withSection(text, section));
    if (Array.isArray(one)) return stepsOf(one, section, depth + 1);
    if (!isGroup(one)) return [];
    const inner = field(one, 'itemListElement') ?? field(one, 'steps') ?? field(one, 'item');
    const name = textOf(field(one, 'name'));
    const text = field(one, 'text') ?? field(one, 'description') ?? field(one, 'itemListElement');
    if (isOfType(one, 'HowToSection')) return stepsOf(inner, name, depth + 1);
    if (typeof text === 'string') return paragraphs(text).map((line) => withSection(line, section));
    if (inner !== undefined) return stepsOf(inner, isOfType(one, 'HowToStep') ? section : name || section, depth + 1);
    return name === '' ? [] : [withSection(name, section)];
  });
}
