import { existsSync } from 'node:fs';
import { dirname, join } from 'node:path';

/** The folder that holds package.json: the same from the sources, from the bundles in out/ and from a packaged program. */
export function projectFolder(from: string = import.meta.dirname): string {
  let at = from;
  while (!existsSync(join(at, 'package.json'))) {
    const up = dirname(at);
    if (up === at) throw new Error(`no package.json above ${from}`);
    at = up;
  }
  return at;
}

/** Where the demo events lie. */
export const demoFolder = (project: string): string => join(project, 'assets', 'app', 'demo');

/** Where the built screens lie. */
export const rendererFolder = (project: string): string => join(project, 'out', 'renderer');

/** The shelf of recipes that comes with the program. */
export const starterShelf = (project: string): string => join(project, 'assets', 'app', 'shelf', 'starter.brimful-shelf');
