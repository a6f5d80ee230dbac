import type { CookingNote, CookingPlan } from '../cooking';
import { computed, figure, minus, workingOf, type Figure } from '../figure';
import type { MenuPlan } from '../menu';
import type { Task, TimelinePlan } from '../timeline';

/** From ready to the last portion, in minutes. */
const stoodFigure = (ready: number, until: number): Figure => figure(until - ready, 'min', () => workingOf('cooking.stood', [
  computed('until', { word: 'cooking.term.until' }, until, 'min', 'cooking.method.servings'), computed('ready', { word: 'cooking.term.ready' }, ready, 'min', 'cooking.method.day'),
], minus('until', 'ready')));

/** Ends of the last steps of one cooking, one for each of its goes. */
function readyTimes(tasks: readonly Task[], last: ReadonlySet<string>, dish: string, cooking: number): number[] {
  const ends = new Map<string, number>();
  for (const t of tasks) {
    // Long work is cut into parts: all of them together end the step.
    const job = (t.job ?? t.id).replace(/\/(part\d+|by-itself)$/, '');
    if (t.kind !== 'step' || t.dish !== dish || t.cooking !== cooking || !last.has(job.split('/')[1] ?? '')) continue;
    ends.set(job, Math.max(ends.get(job) ?? Number.NEGATIVE_INFINITY, t.end));
  }
  return [...ends.values()];
}

/**
 * Cookings that stand longer from ready to their last portion than the dish keeps, because the day has no better place for them: the worst of each
 * dish. Where there is none, every served minute lies within the keeping time.
 */
export function stoodTooLong(menu: MenuPlan, cooking: CookingPlan, day: TimelinePlan): readonly CookingNote[] {
  return cooking.dishes.flatMap((made): CookingNote[] => {
    const { keeps } = made;
    const recipe = menu.dishes.find((d) => d.id === made.dish)?.recipe;
    if (keeps === null || recipe === undefined) return [];
    const waitedFor = new Set(recipe.steps.flatMap((s) => s.after));
    const last = new Set(recipe.steps.filter((s) => !waitedFor.has(s.id)).map((s) => s.id));
    const worst = made.cookings
      .flatMap((c) => readyTimes(day.tasks, last, made.dish, c.number).map((ready) => ({ c, ready, minutes: c.to - ready })))
      .reduce<{ c: (typeof made.cookings)[number]; ready: number; minutes: number } | null>((w, x) => (w === null || x.minutes > w.minutes ? x : w), null);
    if (worst === null || worst.minutes <= keeps.value) return [];
    return [{
      dish: made.dish, level: 'watch', measured: stoodFigure(worst.ready, worst.c.to), limit: keeps, ways: made.notes.flatMap((n) => n.ways),
      message: { id: 'cooking.say.stood', params: { dish: made.name, turn: worst.c.number, ready: worst.ready, until: worst.c.to, minutes: worst.minutes, keeps: keeps.value } },
    }];
  });
}
