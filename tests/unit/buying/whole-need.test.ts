import { describe, expect, it } from 'vitest';
import { wholeNeed } from '../../../shared/buying';
import { amountOf, amountText } from '../../../shared/measure';
import { lanternPlan } from '../sheets/lantern';

const line = lanternPlan().buying.lines[0]!;

describe('what is needed as a cook says it', () => {
  it('counts whole things, and leaves weights and measures alone', () => {
    expect(amountText(wholeNeed({ ...line, need: amountOf('0.855', 'piece') }))).toEqual({ amount: '1', unit: 'piece' });
    expect(amountText(wholeNeed({ ...line, need: amountOf('3', 'bunch') }))).toEqual({ amount: '3', unit: 'bunch' });
    expect(amountText(wholeNeed({ ...line, need: amountOf('0.855', 'kg') }))).toEqual({ amount: '0.855', unit: 'kg' });
  });
});
