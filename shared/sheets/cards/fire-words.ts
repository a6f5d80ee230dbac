import type { Event } from '../../event';
import type { PlainWordId } from '../../words';

/** The one line on hot oil and fire at the foot of a card: cover it and call, or in the United Kingdom leave it and call (rules DF-08, DF-09). */
export const fireWords = (event: Event): PlainWordId => (event.preferences.safetyProfile === 'uk' ? 'sheets.cards.fireUk' : 'sheets.fry.short');
