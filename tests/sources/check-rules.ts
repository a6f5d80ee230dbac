/** `npm run -s check:rules -- FILE...`: one line per failing check; exit 1 when any fails, 2 for a file that cannot be read. */
import { readFileSync } from 'node:fs';
import { checksIn, runCheck, type Verdict } from './rule-checks';

const files = process.argv.slice(2);
if (files.length === 0) {
  console.error('name one or more check files: npm run -s check:rules -- FILE...');
  process.exit(2);
}
const verdicts: Verdict[] = [];
for (const file of files) {
  try {
    verdicts.push(...checksIn(JSON.parse(readFileSync(file, 'utf8'))).map(runCheck));
  } catch (error) {
    console.error(`${file}: ${error instanceof Error ? error.message : String(error)}`);
    process.exit(2);
  }
}
const count = (state: Verdict['state']): number => verdicts.filter((v) => v.state === state).length;
for (const v of verdicts) if (v.state === 'failed') console.log(`${v.id} (${v.model}): ${v.why}`);
console.log(`${count('passed')} passed, ${count('failed')} failed, ${count('skipped')} skipped`);
process.exit(count('failed') > 0 ? 1 : 0);
