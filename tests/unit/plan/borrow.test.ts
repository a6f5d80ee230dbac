import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { addBorrowed, waveLoan, type EditResult } from '../../../shared/edit';
import { formatsFor, parseEvent, serialiseEvent, type Event } from '../../../shared/event';
import { loanId, loanIdeas, plan, type LoanIdea } from '../../../shared/plan';
import { sayMessage } from '../../../shared/words';
import { workingFaults } from '../frying/fry-event';

const load = (name: string): Event => {
  const parsed = parseEvent(readFileSync(new URL(`../../../assets/app/demo/${name}.brimful`, import.meta.url), 'utf8'));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.problems));
  return parsed.event;
};
const demo = load('lantern-evening');
const done = (made: EditResult): Event => {
  if (!('event' in made)) throw new Error('refused');
  return made.event;
};
const kitchen = (patch: Partial<Event['kitchen']>): Event => ({ ...demo, kitchen: { ...demo.kitchen, ...patch } });
const ideasOf = (event: Event): LoanIdea[] => loanIdeas(plan(event));
const idsOf = (event: Event): string[] => ideasOf(event).map((i) => i.id);
const onGas = kitchen({ burners: demo.kitchen.burners.map((b) => ({ ...b, kind: 'lpg' as const })) });

describe('what the plan would have somebody borrow', () => {
  it('a flask where a drink has nothing to be served from', () => {
    const none = kitchen({ dispensers: [], pots: [] });
    expect(idsOf(none).filter((id) => id.startsWith('flask-')).length).toBeGreaterThan(0);
    expect(idsOf(demo).filter((id) => id.startsWith('flask-'))).toEqual([]);
  });
  it('tubs for the ice, as many as the drinks room says', () => {
    const tubs = kitchen({ iceTubLitres: 20 });
    const idea = ideasOf(tubs).find((i) => i.id === 'ice-tub');
    expect(idea?.count).toBe(plan(tubs).drinks.ice?.tubs.value);
    expect(idsOf(demo)).not.toContain('ice-tub');
  });
  it('a cool box for what the fridge has no room for: as large as is missing', () => {
    const small = kitchen({ coldLitres: 10 });
    const finding = plan(small).safety.findings.find((f) => f.rule === 'CH-06');
    expect(finding).toBeDefined();
    expect(ideasOf(small).find((i) => i.id === 'cool-box')?.name).toEqual({ id: 'loan.coolBox', params: { litres: Math.ceil((finding?.measured.value ?? 0) - (finding?.limit.value ?? 0)) } });
    expect(idsOf(kitchen({ coldLitres: 5000 }))).not.toContain('cool-box');
  });
  it('gas and boxes that would have to be bought, with the figure of the list', () => {
    const gas = ideasOf(onGas).find((i) => i.id === 'gas-bottle');
    expect(gas?.figure?.value).toBe(plan(onGas).day.gasNeed?.wantedKg.value);
    const boxes = ideasOf(demo).find((i) => i.id === 'food-boxes');
    expect(boxes?.count).toBe(boxes?.figure?.value);
    expect(boxes?.figure?.value).toBe(Number(plan(demo).buying.lines.find((l) => l.ingredient === 'food-boxes')?.need.amount));
  });
  it('another pan, or a stronger burner, where the fry line cannot keep up', () => {
    const weak = kitchen({ burners: demo.kitchen.burners.map((b) => ({ ...b, ratedW: Math.min(b.ratedW, 900) })) });
    const made = plan(weak);
    expect(made.frying.shortages.length).toBeGreaterThan(0);
    const asked = made.frying.shortages.flatMap((s) => s.remedies.map((r) => r.id));
    const ideas = loanIdeas(made);
    expect(ideas.some((i) => i.id.startsWith('pan-'))).toBe(asked.includes('frying.shortage.pans'));
    expect(ideas.some((i) => i.id.startsWith('burner-'))).toBe(asked.includes('frying.shortage.burner'));
    expect(ideas.filter((i) => i.id.startsWith('pan-') || i.id.startsWith('burner-')).length).toBeGreaterThan(0);
  });
  it('what is on the list in that number, or waved away, is not said again; more of it is', () => {
    const [idea] = ideasOf(demo);
    if (idea === undefined) throw new Error('no idea');
    const taken = (count: number) => done(addBorrowed(demo, { id: loanId(idea), name: 'Boxes', count }));
    expect(idsOf(taken(idea.count))).not.toContain(idea.id);
    expect(idsOf(taken(Math.max(1, idea.count - 1)))).toContain(idea.id);
    const waved = done(waveLoan(demo, { id: idea.id, name: 'Boxes' }));
    expect(idsOf(waved)).not.toContain(idea.id);
    expect(idsOf(done(waveLoan(waved, null)))).toContain(idea.id);
    expect(parseEvent(serialiseEvent(waved))).toMatchObject({ ok: true, event: { shopping: { noLoans: [idea.id] } } });
  });
  it('says each in words, once, and its figures open', () => {
    for (const event of [demo, onGas, kitchen({ iceTubLitres: 20, coldLitres: 10, dispensers: [] }), load('school-fair-stall'), load('freezer-sunday')]) {
      const ideas = ideasOf(event);
      const formats = formatsFor(event.preferences, event.day);
      expect(new Set(ideas.map((i) => i.id)).size).toBe(ideas.length);
      for (const i of ideas) {
        expect(sayMessage(formats, i.name).length).toBeGreaterThan(3);
        expect(sayMessage(formats, i.why)).toMatch(/\.$/);
        expect(i.figure === undefined ? [] : workingFaults(i.figure)).toEqual([]);
      }
    }
  });
});
