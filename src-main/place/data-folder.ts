import { homedir } from 'node:os';
import { join } from 'node:path';

/** The environment variables that name folders; a type of its own so that tests can hand in theirs. */
export type Surroundings = Readonly<Record<string, string | undefined>>;

/** Where settings, recent files and unsaved copies of this person are kept. `BRIMFUL_DATA_DIR` moves it. */
export function dataFolder(env: Surroundings = process.env, platform: string = process.platform, home: string = homedir()): string {
  const own = env['BRIMFUL_DATA_DIR'];
  if (own) return own;
  if (platform === 'darwin') return join(home, 'Library', 'Application Support', 'Brimful');
  if (platform === 'win32') return join(env['APPDATA'] ?? join(home, 'AppData', 'Roaming'), 'Brimful');
  return join(env['XDG_CONFIG_HOME'] ?? join(home, '.config'), 'brimful');
}

/** Where event files are saved unless the cook says otherwise. It moves along when the data folder is moved. */
export function eventsFolder(env: Surroundings = process.env, home: string = homedir()): string {
  const own = env['BRIMFUL_DATA_DIR'];
  return own ? join(own, 'events') : join(home, 'Documents', 'Brimful');
}
