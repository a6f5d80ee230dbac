import type { Event, Pan } from '../event';
import { assumedBurner, burnerState } from './burner';
import { hotOil } from './oil-figures';
import { depthOf, fillShareOf, freeRimOf, fullLitres, surfaceDiameter } from './pan-figures';
import { panShape } from './pan-shape';
import { settle, settledTerm } from '../household';
import type { BurnerState, KitchenPlan, PanState } from './types';

/** Pans with their oil and burners with what they give. Pure; never throws for an event that `parseEvent` accepted. */
export function planKitchen(event: Event): KitchenPlan {
  const burners = event.kitchen.burners.map((b, at) => burnerState(event, b, at));
  const byId = new Map(burners.map((b) => [b.burner.id, b]));
  return { burners, pans: event.kitchen.pans.map((pan, at) => panState(event, pan, at, byId.get(pan.burner) ?? assumedBurner(event, pan.burner))) };
}

function panState(event: Event, pan: Pan, at: number, burner: BurnerState): PanState {
  const target = settle(event, 'oil.T.target');
  const shape = panShape(event, pan, at);
  const hot = hotOil(event,
    { key: 'cold', label: { word: 'kitchen.term.coldOil' }, value: pan.oilLitres, unit: 'L', origin: { kind: 'entered', path: `kitchen.pans[${at}].oilLitres` } },
    { ...settledTerm('celsius', target), value: target.value });
  const depth = depthOf(shape, hot);
  const full = fullLitres(shape);
  return {
    pan, burner, fullLitres: full, hotOilLitres: hot, hotDepthMm: depth,
    surfaceDiameterMm: surfaceDiameter(shape, depth), fillShare: fillShareOf(hot, full), freeRimMm: freeRimOf(shape, depth),
  };
}
