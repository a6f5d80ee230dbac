import type { Task } from '../../timeline';
import { worstOfEach, type Rule } from '../rule';

/** Work at the pan itself: it is the watching. */
const atThePan: readonly Task['kind'][] = ['watchOil', 'fry', 'heatOil'];

interface Clash { readonly who: string; readonly task: Task; readonly minutes: number }
/** What the watchers do besides while they watch. Every job is held against every watch, so the times come first: most are apart. */
function clashesOf(watches: readonly Task[], tasks: readonly Task[]): readonly Clash[] {
  const clashes: Clash[] = [];
  for (const w of watches) {
    for (const t of tasks) {
      if (t.start >= w.end || t.end <= w.start || t.attention === 0 || (t.station === w.station && atThePan.includes(t.kind))) continue;
      const minutes = Math.min(w.end, t.end) - Math.max(w.start, t.start);
      const who = t.who.find((p) => w.who.includes(p));
      if (who !== undefined && minutes > 0) clashes.push({ who, task: t, minutes });
    }
  }
  return clashes;
}

/** DF-12: whoever watches hot oil does nothing else, and somebody always watches. */
export const watchedOil: Rule = {
  id: 'DF-12', level: 'stop', title: { id: 'safety.title.DF-12' },
  judge(s) {
    const watches = s.day.tasks.filter((t) => t.kind === 'watchOil' || t.kind === 'heatOil');
    if (s.frying.sessions.length > 0 && watches.length === 0) return { hits: [], needs: { id: 'safety.needs.watch' } };
    const alone = watches.filter((w) => w.who.length === 0).map((w) => ({ value: w.end - w.start, unit: 'min', about: [w.station ?? w.id], message: { id: 'safety.say.DF-12.alone', params: { from: Number(w.start), to: Number(w.end) } } }) as const);
    const clashes = clashesOf(watches, s.day.tasks);
    return {
      hits: [
        ...worstOfEach(alone, (h) => h.about.join(), (h) => h.value),
        ...worstOfEach(clashes, (c) => c.who, (c) => c.minutes).map(({ who, task, minutes }) => ({
          value: minutes, unit: 'min', about: [who, task.id],
          message: { id: 'safety.say.DF-12', params: { person: s.event.people.find((p) => p.id === who)?.name ?? who, at: Number(task.start), minutes } } as const,
        })),
      ],
    };
  },
};
