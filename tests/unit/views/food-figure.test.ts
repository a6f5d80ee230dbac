import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { foodFigure } from '../../../src-renderer/parts/food-figure';
import { parseEvent } from '../../../shared/event';
import type { Figure, Origin } from '../../../shared/figure';
import { plan } from '../../../shared/plan';
import { ingredients, sourceTitle } from '../../../shared/reference';

const parsed = parseEvent(readFileSync(new URL('../../../assets/app/demo/lantern-evening.brimful', import.meta.url), 'utf8'));
if (!parsed.ok) throw new Error('the demo does not open');

const originsOf = (figure: Figure, depth = 0): Origin[] =>
  figure.working().terms.flatMap((t) => [...(t.origin === undefined ? [] : [t.origin]), ...(t.figure === undefined || depth > 8 ? [] : originsOf(t.figure, depth + 1))]);

describe('where tables disagree', () => {
  it('an input tells what the others say and why this one is used', () => {
    const found = foodFigure({ kind: 'table', source: 'SR26', row: 'basmati-rice.density' });
    expect(found?.of).toBe('density');
    expect(found?.figure.other.map((o) => o.value)).toEqual([0.82, 0.787, 0.822]);
    expect(found?.figure.note).toContain('used');
    expect([foodFigure({ kind: 'definition' }), foodFigure({ kind: 'table', source: 'common-practice', row: 'packs' })]).toEqual([null, null]);
  });
  it('is met when the shopping list of the demo is opened', () => {
    const shown = plan(parsed.event).buying.lines.flatMap((l) => originsOf(l.needFigure)).flatMap((o) => foodFigure(o) ?? []);
    expect(shown.some(({ figure }) => figure.other.length > 0)).toBe(true);
  });
  it('every disagreement of the table names its sources and states the choice', () => {
    const all = ingredients.flatMap((i) => Object.entries(i.figures).flatMap(([of, figure]) => (figure.other.length === 0 ? [] : [{ id: `${i.id}.${of}`, figure }])));
    expect(all.length).toBeGreaterThan(10);
    expect(all.filter(({ figure }) => figure.note === undefined || figure.note === '').map(({ id }) => id)).toEqual([]);
    expect(all.flatMap(({ figure }) => figure.other.filter((o) => sourceTitle(o.source) === undefined))).toEqual([]);
  });
});
