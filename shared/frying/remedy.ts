import type { Event, Pan } from '../event';
import { planKitchen } from '../kitchen';
import type { Message } from '../words';
import type { DishPart } from './dish-parts';
import { sizeLoad } from './load';

const half = 0.5;
const widerMm = 40;
const strongerW = 1000;

/** What would let more pieces in, with its gain: each change is worked out through the whole kitchen again. null when none of them helps. */
export function loadRemedy(event: Event, part: DishPart): Message | null {
  const { limitedBy, pieces, pan } = part.load.plan;
  const now = pieces.value;
  const recipe = part.load.inputs;
  const withPan = (change: (p: Pan) => Pan): number => tried({ ...event, kitchen: { ...event.kitchen, pans: event.kitchen.pans.map((p) => (p.id === pan ? change(p) : p)) } });
  const tried = (changed: Event): number => {
    const state = planKitchen(changed).pans.find((p) => p.pan.id === pan);
    return state === undefined ? 0 : sizeLoad(changed, state, recipe.frying, '', part.line.sharing).plan.pieces.value;
  };
  const stronger = (): Message | null => {
    const n = tried({ ...event, kitchen: { ...event.kitchen, burners: event.kitchen.burners.map((b) => (b.id === part.load.inputs.state.burner.burner.id ? { ...b, ratedW: b.ratedW + strongerW } : b)) } });
    return n > now ? { id: 'frying.remedy.burner', params: { watts: strongerW, pieces: n, now } } : null;
  };
  const moreOil = (): Message | null => {
    const n = withPan((p) => ({ ...p, oilLitres: p.oilLitres + half }));
    return n > now ? { id: 'frying.remedy.moreOil', params: { litres: half, pieces: n, now } } : null;
  };
  const lessOil = (): Message | null => {
    const n = withPan((p) => ({ ...p, oilLitres: Math.max(0.2, p.oilLitres - half) }));
    return n > now ? { id: 'frying.remedy.lessOil', params: { litres: half, pieces: n, now } } : null;
  };
  const wider = (): Message | null => {
    const n = withPan((p) => ({
      ...p, ...(p.rimMm === undefined ? {} : { rimMm: p.rimMm + widerMm }), ...(p.widthMm === undefined ? {} : { widthMm: p.widthMm + widerMm }),
    }));
    return n > now ? { id: 'frying.remedy.wider', params: { mm: widerMm, pieces: n, now } } : null;
  };
  switch (limitedBy) {
    case 'heat': return stronger();
    case 'dip': return moreOil() ?? stronger();
    case 'oilRatio': return moreOil();
    case 'rim': return lessOil();
    case 'space': return wider();
  }
}
