import { parseArgs } from 'node:util';
import { BadInput } from './terminal';
import { tell } from './words';

type Kinds = Readonly<Record<string, 'string' | 'boolean'>>;

/** What was written after the command's name. */
export interface Given {
  readonly files: readonly string[];
  text(name: string): string | undefined;
  flag(name: string): boolean;
}

/** Reads options and names. @throws BadInput for an option the command does not have. */
export function readOptions(args: readonly string[], kinds: Kinds): Given {
  const options = Object.fromEntries(Object.entries(kinds).map(([name, type]) => [name, { type }]));
  try {
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true });
    return {
      files: positionals,
      text: (name) => {
        const value = values[name];
        return typeof value === 'string' ? value : undefined;
      },
      flag: (name) => values[name] === true,
    };
  } catch (error) {
    throw new BadInput(tell('command.options', { what: (error instanceof Error ? error.message : String(error)).split(/\.\s|\n/)[0]?.replace(/\.$/, '') ?? '' }));
  }
}

/** Most people of one kind that an option takes. */
export const mostPeople = 20_000;

/** A whole number of people, or undefined when the option is not given. @throws BadInput */
export function peopleOption(given: Given, option: string): number | undefined {
  const text = given.text(option);
  if (text === undefined) return undefined;
  const value = Number(text);
  if (!/^\d+$/.test(text) || value > mostPeople) throw new BadInput(tell('command.whole-number', { option, given: text, most: mostPeople }));
  return value;
}
