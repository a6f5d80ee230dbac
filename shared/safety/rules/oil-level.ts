import type { Figure } from '../../figure';
import { safetyRule } from '../../reference';
import type { Message } from '../../words';
import type { Level } from '../types';
import type { Hit, Rule, Subject } from '../rule';

interface PanLevel { readonly id: string; readonly name: string; readonly share: Figure; readonly rim: Figure }

/** Hot oil with the largest load in it; a pan that fries nothing today is judged by its hot oil alone. */
function levels(s: Subject): readonly PanLevel[] {
  return s.kitchen.pans.map((p) => {
    const loaded = s.frying.oil.find((o) => o.pan === p.pan.id);
    return {
      id: p.pan.id, name: p.pan.name,
      share: loaded?.loadedFillShare ?? p.fillShare,
      rim: loaded?.loadedFreeRimMm ?? p.freeRimMm,
    };
  });
}

type FillId = 'DF-03a' | 'DF-03b';
type RimId = 'DF-04a' | 'DF-04b';

const third = safetyRule('DF-03a').limit ?? 0;
const half = safetyRule('DF-03b').limit ?? 0;
const caution = safetyRule('DF-04a').limit ?? 0;
const stop = safetyRule('DF-04b').limit ?? 0;

/** One finding for all pans alike: the worst is measured and stands first. */
const oneHit = (pans: readonly PanLevel[], of: (p: PanLevel) => Figure, unit: string, message: (names: readonly string[], value: number) => Message): readonly Hit[] => {
  const [worst] = pans;
  return worst === undefined ? [] : [{ value: of(worst).value, unit, figure: of(worst), about: pans.map((p) => p.id), message: message(pans.map((p) => p.name), of(worst).value) }];
};
const fillRule = (id: FillId, level: Level, over: (share: number) => boolean): Rule => ({
  id, level, title: { id: `safety.title.${id}` },
  judge: (s) => ({ hits: oneHit(levels(s).filter((p) => over(p.share.value)).toSorted((a, b) => b.share.value - a.share.value), (p) => p.share, 'share', (pans, share) => ({ id: `safety.say.${id}`, params: { pans, share } })) }),
});
const rimRule = (id: RimId, level: Level, under: (mm: number) => boolean): Rule => ({
  id, level, title: { id: `safety.title.${id}` },
  judge: (s) => ({ hits: oneHit(levels(s).filter((p) => under(p.rim.value)).toSorted((a, b) => a.rim.value - b.rim.value), (p) => p.rim, 'mm', (pans, mm) => ({ id: `safety.say.${id}`, params: { pans, mm } })) }),
});

/** DF-03a: more than a third of the pan is hot oil and food. */
export const oilThird: Rule = fillRule('DF-03a', 'warn', (share) => share > third && share <= half);
/** DF-03b: more than half of the pan is hot oil and food. */
export const oilHalf: Rule = fillRule('DF-03b', 'stop', (share) => share > half);
/** DF-04a: less than 80 mm of rim above the loaded oil. */
export const rimLow: Rule = rimRule('DF-04a', 'caution', (mm) => mm < caution && mm >= stop);
/** DF-04b: less than 50 mm of rim above the loaded oil. */
export const rimGone: Rule = rimRule('DF-04b', 'stop', (mm) => mm < stop);
