import { isAbsolute, resolve } from 'node:path';

/** The event file named on a command line, as a whole path; null when none is named. */
export function askedFile(args: readonly string[], workingFolder: string): string | null {
  const named = args.find((argument) => !argument.startsWith('-') && argument.toLowerCase().endsWith('.brimful'));
  if (named === undefined) return null;
  return isAbsolute(named) ? named : resolve(workingFolder, named);
}
