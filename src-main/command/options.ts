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

/** Reads options and names. `most`: how many names the command takes. @throws BadInput for an option the command does not have, and a name too many. */
export function readOptions(args: readonly string[], kinds: Kinds, most = Infinity): Given {
  const options = Object.fromEntries(Object.entries(kinds).map(([name, type]) => [name, { type }]));
  const { values, positionals } = parsed(joined(args, kinds), options);
  const extra = positionals[most];
  if (extra !== undefined) throw new BadInput(tell('command.extra', { given: extra, most }));
  return {
    files: positionals,
    text: (name) => {
      const value = values[name];
      return typeof value === 'string' ? value : undefined;
    },
    flag: (name) => values[name] === true,
  };
}

function parsed(args: string[], options: Record<string, { type: 'string' | 'boolean' }>) {
  try {
    return parseArgs({ args, options, allowPositionals: true });
  } catch (error) {
    throw new BadInput(tell('command.options', { what: (error instanceof Error ? error.message : String(error)).split(/\.\s|\n/)[0]?.replace(/\.$/, '') ?? '' }));
  }
}

/** `--adults -3` as `--adults=-3`: a value that begins with a dash is the option's own, so that its check can say what is wrong with it. */
function joined(args: readonly string[], kinds: Kinds): string[] {
  const out: string[] = [];
  for (let at = 0; at < args.length; at += 1) {
    const [arg = '', next] = [args[at], args[at + 1]];
    const takesText = arg.startsWith('--') && kinds[arg.slice(2)] === 'string';
    if (takesText && next !== undefined && /^-\d/.test(next)) {
      out.push(`${arg}=${next}`);
      at += 1;
    } else out.push(arg);
  }
  return out;
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
