import { shoppingOf, type Event } from '../event';
import { figure, just } from '../figure';
import { amountFrom } from '../measure';
import { otherSection, type LineDraft } from './line';

/** Key of an own line on the list. */
export const ownKey = (id: string): string => `own/${id}`;

/** The lines the cook wrote: bought as they stand, in no packs. A section the shop does not have is `other`. */
export function ownDrafts(event: Event, sections: readonly string[]): LineDraft[] {
  return shoppingOf(event).ownLines.map((line, i): LineDraft => {
    const { amount, unit } = amountFrom(line.amount);
    return {
      key: ownKey(line.id), kind: 'own', id: line.id, row: undefined, name: line.name, unit, need: amount,
      section: sections.includes(line.section) ? line.section : otherSection,
      needFigure: figure(amount.toNumber(), unit, () => ({
        rule: 'buying.own',
        terms: [{ key: 'own', label: { word: 'buying.term.own' }, value: amount.toNumber(), unit, origin: { kind: 'entered', path: `shopping.ownLines[${i}].amount` } }],
        sum: just('own'),
      })),
      origins: [], shelf: null, exact: true, when: line.when ?? null, reserve: null,
    };
  });
}
