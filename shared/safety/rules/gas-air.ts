import type { Burner } from '../../event';
import { safetyRule } from '../../reference';
import type { Rule, Subject } from '../rule';
import { factRule, needsFact, yesNo } from './facts';

const burnsGas = (b: Burner): boolean => b.kind === 'gas' || b.kind === 'lpg' || b.kind === 'outdoorGas';

/** Hours of gas burning inside: oil kept hot, potfuls on the hob, steps that need a burner; each counted for itself. All gas burners of the kitchen are taken to stand inside unless they are entered as outdoors. */
export function gasHoursInside(s: Subject): number {
  const inside = s.event.kitchen.burners.filter((b) => burnsGas(b) && b.place === 'indoor').map((b) => b.id);
  if (inside.length === 0) return 0;
  const onGas = new Set(s.event.kitchen.pans.filter((p) => inside.includes(p.burner)).map((p) => p.id));
  const oil = s.frying.sessions.filter((x) => onGas.has(x.pan)).reduce((sum, x) => sum + (x.heatOffAt - x.heatOnAt), 0);
  const cooked = s.day.tasks.filter((t) => (t.kind === 'step' || t.kind === 'brew') && t.needs.some((n) => n.thing.startsWith('burner'))).reduce((sum, t) => sum + (t.end - t.start), 0);
  return (oil + cooked) / 60;
}

/** An hour of gas inside asks for an alarm (rule GC-02); four hours for air (rule GC-04). */
const alarmHours = 1;
const airHours = 4;

/** GC-02: an alarm for carbon monoxide where gas burns inside for more than an hour. */
export const carbonMonoxide: Rule = factRule({
  id: 'GC-02', level: 'warn', title: { id: 'safety.title.GC-02' }, fact: 'coAlarm', applies: (s) => gasHoursInside(s) > alarmHours,
  judge: (has, s) => (has ? null : { value: gasHoursInside(s), unit: 'h', limit: { value: alarmHours, unit: 'h' }, about: [], message: { id: 'safety.say.GC-02', params: { hours: gasHoursInside(s) } } }),
});

/** GC-04: a window or a hood where gas burns inside for more than four hours. */
export const freshAir: Rule = factRule({
  id: 'GC-04', level: 'warn', title: { id: 'safety.title.GC-04' }, fact: 'air', applies: (s) => gasHoursInside(s) > airHours,
  judge: (air, s) => (air === 'none' ? { value: gasHoursInside(s), unit: 'h', limit: { value: airHours, unit: 'h' }, about: [], message: { id: 'safety.say.GC-04', params: { hours: gasHoursInside(s) } } } : null),
});

const apart = (safetyRule('GC-06').limit ?? 0) * 100;
/** GC-06: cylinder and burner are 60 cm apart and the hose has had its soap test. */
export const leaks: Rule = {
  id: 'GC-06', level: 'warn', title: { id: 'safety.title.GC-06' },
  judge(s) {
    if (s.event.kitchen.cylinders.length === 0) return { hits: [] };
    const { cylinderCm, leakTested } = s.event.precautions ?? {};
    const about = s.event.kitchen.cylinders.map((c) => c.id);
    const hits = [
      ...(cylinderCm !== undefined && cylinderCm < apart ? [{ value: cylinderCm, unit: 'cm', limit: { value: apart, unit: 'cm' }, about, message: { id: 'safety.say.GC-06', params: { cm: cylinderCm, limit: apart } } } as const] : []),
      ...(leakTested === false ? [{ ...yesNo(false), about, message: { id: 'safety.say.GC-06.leak' } } as const] : []),
    ];
    return cylinderCm === undefined || leakTested === undefined ? { hits, needs: needsFact(leakTested === undefined ? 'leakTested' : 'cylinderCm') } : { hits };
  },
};

/** Of the gas in a cylinder this share is counted on before a change is planned (rule GC-07, common practice). */
const counted = 0.8;
/** GC-07: a cylinder is not changed beside hot oil: what the day draws is at most 80 % of it. */
export const gasEnough: Rule = {
  id: 'GC-07', level: 'caution', title: { id: 'safety.title.GC-07' },
  judge: (s) => ({
    hits: s.day.gas.flatMap((g) => {
      const cylinder = s.event.kitchen.cylinders.find((c) => c.id === g.cylinder);
      const limit = counted * (cylinder?.gasKg ?? 0);
      return cylinder !== undefined && g.needKg.value > limit
        ? [{ value: g.needKg.value, unit: 'kg', limit: { value: limit, unit: 'kg' }, about: [g.cylinder], message: { id: 'safety.say.GC-07', params: { cylinder: cylinder.name ?? cylinder.id, kg: g.needKg.value, has: cylinder.gasKg } } } as const] : [];
    }),
  }),
};
