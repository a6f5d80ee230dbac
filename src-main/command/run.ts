import { problemLine } from '../problem';
import { checkCommand } from './check';
import { compareCommand } from './compare';
import { convertCommand } from './convert';
import { exportCommand } from './export';
import { openCommand } from './open';
import { planCommand } from './plan';
import { scaleCommand } from './scale';
import { sheetsCommand } from './sheets';
import { shelfCommand } from './shelf';
import { BadInput, exits, processTerminal } from './terminal';
import type { Command, Terminal } from './terminal';
import { tell } from './words';

const commands: ReadonlyMap<string, Command> = new Map([
  ['plan', planCommand], ['sheets', sheetsCommand], ['export', exportCommand], ['convert', convertCommand], ['scale', scaleCommand], ['shelf', shelfCommand],
  ['check', checkCommand], ['compare', compareCommand], ['open', openCommand],
]);

const isHelp = (argument: string): boolean => argument === '--help' || argument === '-h';

/** Runs the command line. Answers the exit code and never throws. */
export async function runCommand(args: readonly string[], terminal: Terminal = processTerminal): Promise<number> {
  const [name, ...rest] = args;
  if (name === undefined) {
    terminal.err(tell('command.usage'));
    return exits.badInput;
  }
  if (isHelp(name) || name === 'help') {
    terminal.out(tell('command.usage'));
    return exits.ok;
  }
  const command = commands.get(name);
  if (command === undefined) {
    terminal.err(`${tell('command.unknown', { name })}\n\n${tell('command.usage')}`);
    return exits.badInput;
  }
  if (rest.some(isHelp)) {
    terminal.out(command.usage);
    return exits.ok;
  }
  try {
    return await command.run(rest, terminal);
  } catch (error) {
    terminal.err(error instanceof BadInput ? error.message : problemLine(error));
    return exits.badInput;
  }
}
