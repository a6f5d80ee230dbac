import { safetyRule } from '../../reference';
import type { Rule } from '../rule';

const cylinderKg = safetyRule('GC-05').limit ?? 0;

/** GC-01: no portable or outdoor burner inside. */
export const burnerInside: Rule = {
  id: 'GC-01', level: 'stop', title: { id: 'safety.title.GC-01' },
  judge: (s) => ({
    hits: s.event.kitchen.burners
      .filter((b) => b.place === 'indoor' && (b.kind === 'outdoorGas' || (b.portable && (b.kind === 'gas' || b.kind === 'lpg'))))
      .map((b) => ({ value: 1, unit: '', about: [b.id], message: { id: 'safety.say.GC-01', params: { burner: b.name } } })),
  }),
};

/** GC-05: gas cylinders above half a kilogram stay outside. Asked for when an LPG burner is listed without its cylinder. */
export const cylinderInside: Rule = {
  id: 'GC-05', level: 'stop', title: { id: 'safety.title.GC-05' },
  judge(s) {
    const { burners, cylinders } = s.event.kitchen;
    const hits = cylinders.filter((c) => c.place === 'indoor' && c.gasKg > cylinderKg)
      .map((c) => ({ value: c.gasKg, unit: 'kg', about: [c.id], message: { id: 'safety.say.GC-05', params: { kg: c.gasKg } } }) as const);
    const bottled = burners.find((b) => b.kind === 'lpg' || b.kind === 'outdoorGas');
    return bottled !== undefined && cylinders.length === 0 ? { hits, needs: { id: 'safety.needs.cylinder', params: { burner: bottled.name } } } : { hits };
  },
};
