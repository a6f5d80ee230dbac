// `npm run long`: the long campaigns. `npm run long -- 500` makes fewer rounds.
import { tsImport } from 'tsx/esm/api';

const rounds = Number(process.argv[2] ?? 2000);
if (!Number.isInteger(rounds) || rounds < 1) {
  process.stderr.write('Give a whole number of rounds.\n');
  process.exit(2);
}
const { killWhileSaving } = await tsImport('./faults/kill-loop.ts', import.meta.url);
const start = Date.now() % 4_294_967_296;
process.stdout.write(`Killing a save ${rounds} times (start number ${start})...\n`);
const count = await killWhileSaving(rounds, start);
process.stdout.write(`${JSON.stringify(count)}\n`);
const bad = count.torn + count.lost + count.tornBackups + count.strayBackups + count.unswept;
process.stdout.write(bad === 0
  ? `0 of ${rounds} saves torn or lost: with 95 % confidence fewer than ${(300 / rounds).toFixed(2)} % are.\n`
  : `${bad} bad outcomes.\n`);
const { againstSolver } = await tsImport('./unit/frying/against-solver.ts', import.meta.url);
process.stdout.write('Frying against an independent exact solver (HiGHS) on 200 problems...\n');
const solved = await againstSolver(200, start, 2);
process.stdout.write(`${200 - solved.differences.length} equal, ${solved.differences.length} different (${solved.short} with a shortage, least waiting proven on ${solved.waitingProven}); solver ${Math.round(solved.solverMs)} ms, ours ${Math.round(solved.oursMs)} ms: ${Math.round(solved.solverMs / solved.oursMs)} times.\n${solved.differences.join('\n')}\n`);
process.exitCode = bad === 0 && solved.differences.length === 0 ? 0 : 1;

const { randomKitchens } = await tsImport('./unit/timeline/schedule-long.ts', import.meta.url);
const { done, impossible } = randomKitchens(rounds, start);
process.stdout.write(`${rounds} random kitchens: ${done} planned and accepted, ${impossible} impossible, each with a set that truly clashes.\n`);
const { randomDays } = await tsImport('./unit/timeline/days-long.ts', import.meta.url);
const days = randomDays(rounds, start);
process.stdout.write(`${rounds} random kitchens with their helpers: every plan accepted, ${days.clashes} jobs without what they need, ${days.named} with a named clash, each true and with nothing too much.\n`);
