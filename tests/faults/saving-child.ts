import { saveEvent } from '../../src-main/store';
import { numbered } from './numbered-text';

// Saves one version after the other and reports each on its own line, until it is killed.
const [path = '', kilobytes = '200'] = process.argv.slice(2);
for (let version = 1; ; version += 1) {
  await saveEvent(path, numbered(version, Number(kilobytes)), null);
  process.stdout.write(`${version}\n`);
}
