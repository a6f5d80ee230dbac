import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/**
 * The Electron program when its runtime lies on disk, else null. Two looks at the disk and nothing else:
 * importing the electron package to find out would start a download.
 */
export function electronProgram(project, env = process.env) {
  const home = join(project, 'node_modules', 'electron');
  const named = join(home, 'path.txt');
  const override = env.ELECTRON_OVERRIDE_DIST_PATH;
  if (override) {
    const names = { darwin: 'Electron.app/Contents/MacOS/Electron', win32: 'electron.exe' };
    const program = join(override, existsSync(named) ? readFileSync(named, 'utf8').trim() : (names[process.platform] ?? 'electron'));
    return existsSync(program) ? program : null;
  }
  if (!existsSync(named)) return null;
  const program = join(home, 'dist', readFileSync(named, 'utf8').trim());
  return existsSync(program) ? program : null;
}
