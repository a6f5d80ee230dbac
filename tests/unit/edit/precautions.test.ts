import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { record, removeTrial, setPrecautions, setTrial, startHistory, takeTrial, undo, type EditResult } from '../../../shared/edit';
import { hasWritingPlace, precautionsSchema, serialiseEvent, trialSchema, type Event } from '../../../shared/event';
import { hasFieldName } from '../../../shared/words/catalogue/fields';
import { demo } from '../demo/demo';

const { precautions: _answered, ...lantern } = demo('lantern-evening');
const done = (r: EditResult): Event => {
  if ('problem' in r) throw new Error(r.problem.id);
  return r.event;
};

describe('precautions', () => {
  it('are written one by one and taken back without a trace', () => {
    const one = done(setPrecautions(lantern, { lidAtHand: false }));
    const two = done(setPrecautions(one, { wallMetres: 4 }));
    expect(two.precautions).toEqual({ lidAtHand: false, wallMetres: 4 });
    expect(serialiseEvent(done(setPrecautions(done(setPrecautions(two, { wallMetres: undefined })), { lidAtHand: undefined })))).toBe(serialiseEvent(lantern));
  });
  it('refuse what cannot be, beside the field', () => {
    expect(setPrecautions(lantern, { wallMetres: -1 })).toMatchObject({ path: 'precautions.wallMetres' });
    expect(setPrecautions(lantern, { oilSigns: 6 })).toMatchObject({ path: 'precautions.oilSigns' });
  });
});

describe('their fields', () => {
  const keys = ['trials', 'precautions', ...Object.keys(trialSchema.shape), ...Object.keys(precautionsSchema.shape)];
  it.each(keys)('%s has a place in the file and a name', (key) => expect([hasWritingPlace(key), hasFieldName(key)]).toEqual([true, true]));
});

describe('cards and precautions', () => {
  const trial = { id: 'first', dish: lantern.menu.dishes[0]?.id ?? '', pan: lantern.kitchen.pans[0]?.id ?? '', pieces: 20 };
  const edits = fc.array(fc.tuple(fc.nat(4), fc.double({ min: 0.1, max: 12, noNaN: true })).map(([kind, n]) => (event: Event): EditResult => {
    if (kind === 0) return setTrial(event, { ...trial, minutes: n, beforeG: 500 });
    if (kind === 1) return takeTrial(event, 'first');
    if (kind === 2) return removeTrial(event, 'first');
    return setPrecautions(event, { wallMetres: n, lidAtHand: n > 6 });
  }), { minLength: 1, maxLength: 8 });
  it('undo to the same bytes', () => {
    fc.assert(fc.property(edits, (list) => {
      let history = startHistory(lantern);
      let steps = 0;
      for (const edit of list) {
        const answer = edit(history.present);
        if ('problem' in answer) continue;
        history = record(history, answer.event, answer.name);
        steps += 1;
      }
      for (; steps > 0; steps -= 1) history = undo(history);
      expect(serialiseEvent(history.present)).toBe(serialiseEvent(lantern));
    }), { numRuns: 60 });
  });
});
