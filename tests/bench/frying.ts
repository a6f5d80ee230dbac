/** Solves stored frying instances and compares with their proven optimum: `npm run bench:frying -- DIR`. Exits 1 on any difference. */
import { readdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import { fewestBowls, portionMinutes, solve, type FryProblem } from '../../shared/frying';

interface Instance {
  id: string; horizon: number; pans: number; cycle: number; panLoad: number; hold: number; lotLife: number; lotSize: number; demand: number[];
  optimal: { unmetPortions: number; batches: number; lots: number; ageMinutes: number };
}

function files(target: string): string[] {
  if (statSync(target).isFile()) return [target];
  return readdirSync(target).filter((f) => f.endsWith('.json')).sort().map((f) => path.join(target, f));
}
const read = (file: string): Instance[] => {
  const parsed: unknown = JSON.parse(readFileSync(file, 'utf8'));
  return (Array.isArray(parsed) ? parsed : [parsed]) as Instance[];
};
const problemOf = (i: Instance): FryProblem => ({
  wanted: portionMinutes(i.demand, 0), load: i.panLoad, fry: i.cycle, cycle: i.cycle, hold: i.hold, lead: 0, earliest: 0, free: () => i.pans, pans: i.pans,
});

const targets = process.argv.slice(2);
if (targets.length === 0) {
  console.error('name a file or a folder of instances: npm run bench:frying -- DIR');
  process.exit(2);
}
let differences = 0;
let total = 0;
for (const file of targets.flatMap(files)) {
  for (const instance of read(file)) {
    total += 1;
    const started = performance.now();
    const answer = solve(problemOf(instance), 3_000_000);
    const ms = performance.now() - started;
    const bowls = fewestBowls(answer.batches.map((b) => ({ at: b.dropAt, pieces: b.end - b.first })), instance.lotSize, instance.lotLife);
    const waiting = answer.batches.reduce((sum, b) => sum + answer.served.slice(b.first, b.end).reduce((s, t) => s + t - b.dropAt - instance.cycle, 0), 0);
    const { unmetPortions, batches, lots, ageMinutes } = instance.optimal;
    const equal = answer.unmet.length === unmetPortions && answer.batches.length === batches && bowls.length === lots;
    if (!equal) differences += 1;
    console.log(`${equal ? 'equal ' : 'DIFFER'} ${instance.id}: unmet ${answer.unmet.length}/${unmetPortions}, batches ${answer.batches.length}/${batches}, bowls ${bowls.length}/${lots}, waiting ${waiting}/${ageMinutes} portion-min, ${ms.toFixed(2)} ms`);
  }
}
console.log(`${total - differences} equal, ${differences} different (found/proven best)`);
process.exit(differences > 0 || total === 0 ? 1 : 0);
