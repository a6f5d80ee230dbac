import { catalogue } from '../words';
import type { FieldPath } from './problem';

/** A step on the way to a field, as the words of the subject `event` take it. */
export interface WhereStep {
  readonly key: string;
  readonly number?: number;
  readonly name?: string;
}

const longestShown = 40;
const isGroup = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null && !Array.isArray(value);
const child = (value: unknown, key: string | number): unknown => {
  if (typeof key === 'number') return Array.isArray(value) ? value[key] : undefined;
  return isGroup(value) && Object.hasOwn(value, key) ? value[key] : undefined;
};

/** The value at a path of a parsed JSON document; undefined when the way breaks off. */
export const valueAt = (root: unknown, path: FieldPath): unknown => path.reduce<unknown>((value, key) => child(value, key), root);

function nameOf(value: unknown): string | undefined {
  const name = ['name', 'ingredient', 'id'].map((key) => child(value, key)).find((text) => typeof text === 'string' && text.trim() !== '');
  return typeof name === 'string' ? shorten(name) : undefined;
}

const shorten = (text: string): string => (text.length > longestShown ? `${text.slice(0, longestShown)}…` : text);

/** A value as it is quoted in a sentence: short, text in quotation marks. */
export function quoted(value: unknown): string {
  if (value === undefined || value === null) return catalogue['event.got.nothing'];
  if (typeof value === 'string') return `"${shorten(value)}"`;
  if (Array.isArray(value)) return catalogue['event.got.list'];
  return typeof value === 'number' || typeof value === 'boolean' ? String(value) : catalogue['event.got.group'];
}

/** Turns a path into steps a cook can follow: list items are counted from 1 and carry their own name. */
export function whereOf(root: unknown, path: FieldPath): WhereStep[] {
  const steps: WhereStep[] = [];
  path.forEach((key, at) => {
    if (typeof key === 'string') {
      if (typeof path[at + 1] !== 'number') steps.push({ key });
      return;
    }
    const list = path[at - 1];
    const name = nameOf(valueAt(root, path.slice(0, at + 1)));
    steps.push({ key: typeof list === 'string' ? list : '', number: key + 1, ...(name === undefined ? {} : { name }) });
  });
  return steps;
}
