import { computed, divide, figure, just, least, minus, plus, power, squareRoot, times, worked, type Figure, type Sum, type Term } from '../figure';
import type { PanShape } from './pan-shape';
import { vesselArea, vesselDepth, vesselVolume } from './rules';

const mm3PerLitre = 1e6;

/** π h (3 r₁² + 3 r₂² + h²) / 6 with r₂² = r₁² + 2zh − h², then the wall above; millimetres in, litres out. */
function volumeSum(height: string): Sum {
  const h = least(height, 'curved');
  const r2 = minus(plus(power('bottom', 2), times(2, 'centre', h)), power(h, 2));
  const curve = times(Math.PI / 6, h, plus(times(3, power('bottom', 2)), times(3, r2), power(h, 2)));
  return divide(plus(curve, times('wall', minus(height, h))), mm3PerLitre);
}

const shapeTerms = (shape: PanShape): Term[] => [
  shape.bottom, worked('centre', { word: 'kitchen.term.centre' }, shape.centre), worked('curved', { word: 'kitchen.term.curved' }, shape.curved),
  worked('wall', { word: 'kitchen.term.wall' }, shape.wall),
];

/** Litres to the rim. Rule `pan.full`. */
export const fullLitres = (shape: PanShape): Figure =>
  figure(vesselVolume(shape.vessel, shape.vessel.depth) * 1000, 'L', () => ({ rule: 'pan.full', terms: [...shapeTerms(shape), shape.depth], sum: volumeSum('depth') }));

/**
 * Depth of so many litres, mm, at most the rim. The equation has no handy solution, so the depth is found by halving; the working shows the
 * depth tried, the litres it holds, and the last correction (litres too many ÷ surface), which is zero to the last digit. Rule `pan.depth`.
 */
export function depthOf(shape: PanShape, litres: Figure): Figure {
  const depth = vesselDepth(shape.vessel, litres.value / 1000) * 1000;
  const full = litres.value / 1000 >= vesselVolume(shape.vessel, shape.vessel.depth);
  return figure(depth, 'mm', () => {
    if (full) return { rule: 'pan.brimful', terms: [shape.depth], sum: just('depth') };
    const tried = computed('tried', { word: 'kitchen.term.tried' }, depth, 'mm', 'kitchen.method.tried');
    const area = vesselArea(shape.vessel, depth / 1000) * mm3PerLitre;
    const surface = computed('surface', { word: 'kitchen.term.surface' }, area, 'mm²', 'kitchen.method.surface');
    const excess = times(minus(volumeSum('tried'), 'litres'), mm3PerLitre);
    return { rule: 'pan.depth', terms: [worked('litres', { word: 'kitchen.term.oil' }, litres), ...shapeTerms(shape), tried, surface], sum: minus('tried', divide(excess, 'surface')) };
  });
}

/** Diameter of the free surface at a depth, mm; of the round of equal area for oblong pans. Rule `pan.surface`. */
export function surfaceDiameter(shape: PanShape, depth: Figure): Figure {
  const area = vesselArea(shape.vessel, depth.value / 1000);
  const inCurve = depth.value / 1000 <= shape.vessel.curvedHeight && shape.vessel.curvedHeight > 0;
  return figure(2 * Math.sqrt(area / Math.PI) * 1000, 'mm', () => inCurve
    ? {
        rule: 'pan.surface', terms: [shape.bottom, worked('centre', { word: 'kitchen.term.centre' }, shape.centre), worked('depth', { word: 'kitchen.term.oilDepth' }, depth)],
        sum: times(2, squareRoot(minus(plus(power('bottom', 2), times(2, 'centre', 'depth')), power('depth', 2)))),
      }
    : { rule: 'pan.surfaceWall', terms: [worked('wall', { word: 'kitchen.term.wall' }, shape.wall)], sum: times(2, squareRoot(divide('wall', Math.PI))) });
}

/** Share of the pan taken by liquid. Rule `pan.share`. */
export const fillShareOf = (litres: Figure, full: Figure): Figure =>
  figure(litres.value / full.value, '', () => ({ rule: 'pan.share', terms: [worked('litres', { word: 'kitchen.term.oil' }, litres), worked('full', { word: 'kitchen.term.full' }, full)], sum: divide('litres', 'full') }));

/** Rim above the oil, mm. Rule `pan.rim`. */
export const freeRimOf = (shape: PanShape, depth: Figure): Figure =>
  figure(shape.vessel.depth * 1000 - depth.value, 'mm', () => ({ rule: 'pan.rim', terms: [shape.depth, worked('oil', { word: 'kitchen.term.oilDepth' }, depth)], sum: minus('depth', 'oil') }));
