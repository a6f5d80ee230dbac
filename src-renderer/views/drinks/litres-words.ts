import { amountOf, amountText } from '../../../shared/measure';
import type { Speaker } from '../../app/speak';

/** Litres as a cook measures them: millilitres below one litre, kitchen-rounded. */
export const litresWords = (t: Speaker, litres: number): string => t.formats.amount(amountText(amountOf(litres, 'L')));
