import { resolve } from 'node:path';
import { problemLine } from '../problem';
import { readText } from '../store';
import type { ReadText } from '../store';
import { BadInput } from './terminal';

/** A text file and when it was last changed. @throws BadInput with what is wrong and what to do, when it cannot be read. */
export async function readFileText(path: string): Promise<ReadText> {
  try {
    return await readText(resolve(path));
  } catch (error) {
    throw new BadInput(problemLine(error));
  }
}
