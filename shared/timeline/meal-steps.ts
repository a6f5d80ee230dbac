import { usesPot, type Cooking, type DishCooking } from '../cooking';
import type { Step } from '../event';
import type { DishPlan } from '../menu';
import type { Job } from './job';
import { cutStep, dishKg, pieceOf, spare, type Piece, type StepPart } from './step-jobs';

/** Jobs a part of a step ends with. `turn` 0: once for all cookings; `go` 0: once for all goes of a cooking. */
interface Ended {
  readonly step: string;
  readonly turn: number;
  readonly go: number;
  readonly ends: readonly string[];
}

/** Steps done once for all cookings: what they make keeps from the first to the last, and so does all before them. Nothing that ends a dish or stands in a pot. */
function doneOnce(dish: DishPlan, cookings: readonly Cooking[]): ReadonlySet<string> {
  const once = new Set<string>();
  const { steps } = dish.recipe;
  const [first, last] = [cookings[0]?.from ?? 0, cookings.at(-1)?.from ?? 0];
  const waitedFor = new Set(steps.flatMap((s) => s.after));
  const keepsAll = ({ keeps, endsBefore }: Step): boolean => keeps !== undefined && keeps.place !== 'hot' && keeps.minutes >= last - first && (endsBefore === undefined || last - endsBefore.earliest <= first - endsBefore.latest);
  // Steps may be listed in any order: as often as there are steps is enough.
  for (const _ of steps) for (const s of steps) if (waitedFor.has(s.id) && !usesPot(s) && keepsAll(s) && s.after.every((a) => once.has(a))) once.add(s.id);
  return once;
}

const amountOf = (dish: DishPlan, share: number): StepPart['amount'] => ({ amount: dish.total.amount.times(share.toFixed(9)).toFixed(4), unit: dish.total.unit });

/** The parts of one cooking of a step. */
function partsOf(dish: DishPlan, made: DishCooking, step: Step, cooking: Cooking, nameOfPot: (id: string) => string): { readonly go: number; readonly piece: Piece }[] {
  const isLast = !dish.recipe.steps.some((s) => s.after.includes(step.id));
  const inPots = usesPot(step);
  const goes = inPots ? cooking.pots.length : 1;
  const kg = (dishKg(dish) * cooking.share) / goes;
  // A go is one batch; what is not cooked in goes counts as many as the recipe is multiplied.
  const batches = inPots && goes > 1 ? 1 : Math.max(1, Math.ceil(dish.factor * cooking.share - 1e-9));
  const plain = pieceOf(step, kg, batches, Math.floor(cooking.from));
  const fresh = isLast && made.keeps !== null ? cooking.to - made.keeps.value : Number.NEGATIVE_INFINITY;
  return Array.from({ length: goes }, (_, k) => {
    const pot = inPots ? (cooking.pots[k] ?? null) : null;
    const told = made.cookings.length > 1 || goes > 1 || pot !== null;
    const part: StepPart = { turn: cooking.number, turns: made.cookings.length, go: k + 1, goes, amount: amountOf(dish, cooking.share / goes), ...(pot === null ? {} : { pot: nameOfPot(pot) }) };
    const suffix = `${cooking.number > 1 ? `/cooking${cooking.number}` : ''}${k > 0 ? `/go${k + 1}` : ''}`;
    // Goes one after another may be done so much sooner, never so soon that the dish does not keep.
    return { go: goes > 1 ? k + 1 : 0, piece: { ...plain, suffix, pot, notDoneBefore: Math.min(plain.latest, Math.max(plain.notDoneBefore - cooking.wait, fresh)), part: told ? part : null } };
  });
}

/** Jobs of the recipe steps of a dish of the meal: of each cooking, in each of its goes. What keeps long enough is done once for all cookings. */
export function mealStepJobs(dish: DishPlan, made: DishCooking, handsOn: number, nameOfPot: (id: string) => string): Job[] {
  const { steps } = dish.recipe;
  const once = made.cookings.length > 1 ? doneOnce(dish, made.cookings) : new Set<string>();
  const jobs: { readonly job: Job; readonly step: Step; readonly turn: number; readonly go: number }[] = [];
  const ended: Ended[] = [];
  const add = (step: Step, turn: number, go: number, piece: Piece): void => {
    const { jobs: own, ends } = cutStep(dish, step, piece, handsOn);
    ended.push({ step: step.id, turn, go, ends });
    for (const job of own) jobs.push({ job, step, turn, go });
  };
  for (const step of steps) {
    if (once.has(step.id)) {
      const [first, last] = [pieceOf(step, dishKg(dish), Math.max(1, Math.ceil(dish.factor - 1e-9)), Math.floor(made.cookings[0]?.from ?? 0)), Math.floor(made.cookings.at(-1)?.from ?? 0)];
      add(step, 0, 0, { ...first, notDoneBefore: step.endsBefore === undefined ? first.notDoneBefore : Math.min(first.latest, last - step.endsBefore.earliest) });
    } else for (const cooking of made.cookings) for (const { go, piece } of partsOf(dish, made, step, cooking, nameOfPot)) add(step, cooking.number, go, piece);
  }
  const waitedFor = new Set(steps.flatMap((s) => s.after));
  return jobs.map(({ job, step, turn, go }) => {
    const earlier = ended.filter((e) => step.after.includes(e.step) && (e.turn === 0 || e.turn === turn) && (e.go === 0 || go === 0 || e.go === go)).flatMap((e) => e.ends);
    return { ...job, about: { ...job.about, ...(turn > 0 ? { cooking: turn } : {}) }, after: [...new Set([...earlier, ...job.after])], spare: waitedFor.has(step.id) ? spare.between : spare.last };
  });
}
