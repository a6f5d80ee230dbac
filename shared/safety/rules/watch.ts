import type { Task } from '../../timeline';
import { worstOfEach, type Rule } from '../rule';

/** Work at the pan itself: it is the watching. */
const atThePan: readonly Task['kind'][] = ['watchOil', 'fry', 'heatOil'];
const overlap = (a: Task, b: Task): number => Math.min(a.end, b.end) - Math.max(a.start, b.start);

/** DF-12: whoever watches hot oil does nothing else, and somebody always watches. */
export const watchedOil: Rule = {
  id: 'DF-12', level: 'stop', title: { id: 'safety.title.DF-12' },
  judge(s) {
    const watches = s.day.tasks.filter((t) => t.kind === 'watchOil' || t.kind === 'heatOil');
    if (s.frying.sessions.length > 0 && watches.length === 0) return { hits: [], needs: { id: 'safety.needs.watch' } };
    const alone = watches.filter((w) => w.who.length === 0).map((w) => ({ value: w.end - w.start, unit: 'min', about: [w.station ?? w.id], message: { id: 'safety.say.DF-12.alone', params: { from: Number(w.start), to: Number(w.end) } } }) as const);
    const clashes = watches.flatMap((w) => s.day.tasks.flatMap((t) => {
      const who = t.who.find((p) => w.who.includes(p));
      const minutes = overlap(w, t);
      return who === undefined || minutes <= 0 || t.attention === 0 || (atThePan.includes(t.kind) && t.station === w.station) ? [] : [{ who, task: t, minutes }];
    }));
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
