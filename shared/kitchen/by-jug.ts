import type { Event, Pan } from '../event';
import { panShape } from './pan-shape';
import { vesselVolume } from './rules';

/** Shallowest and deepest pan the event takes, mm. */
const [shallowest, deepest] = [20, 600];

const at = (event: Event, pan: Pan): number => Math.max(0, event.kitchen.pans.findIndex((p) => p.id === pan.id));

/** Litres a pan holds to the rim, were it so deep. */
const heldAt = (event: Event, pan: Pan, depthMm: number): number => {
  const { vessel } = panShape(event, { ...pan, depthMm }, at(event, pan));
  return vesselVolume(vessel, vessel.depth) * 1000;
};

/**
 * Depth at which a pan of this rim and bottom holds so many litres, mm to the tenth: the depth of a round bottom is hard to measure, a litre
 * jug is not. Found by halving, as a deeper pan holds more. Null when no depth the event takes holds that much, or that little.
 */
export function depthByJug(event: Event, pan: Pan, litres: number): number | null {
  let [low, high] = [shallowest, deepest];
  if (litres < heldAt(event, pan, low) || litres > heldAt(event, pan, high)) return null;
  while (high - low > 0.01) {
    const middle = (low + high) / 2;
    if (heldAt(event, pan, middle) < litres) low = middle;
    else high = middle;
  }
  return Math.round(((low + high) / 2) * 10) / 10;
}

/** Litres of oil that stand so deep in a pan, to the hundredth; `depthMm` above the rim counts as the rim. */
export function oilByDepth(event: Event, pan: Pan, depthMm: number): number {
  const { vessel } = panShape(event, pan, at(event, pan));
  return Math.round(vesselVolume(vessel, Math.min(depthMm / 1000, vessel.depth)) * 100_000) / 100;
}
