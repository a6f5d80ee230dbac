/** Geometry of pans in metres and cubic metres; `oilDepth` from the lowest point. */

/** Radius of the sphere of a round-bottom pan, m: (a² + H²) / 2H with half rim a and depth H. Mathematics. Good for depth <= half rim. */
export const capRadius = (rimDiameter: number, depth: number): number => ((rimDiameter / 2) ** 2 + depth ** 2) / (2 * depth);

/** Volume between two parallel cuts of a sphere, m³: πh(3r₁² + 3r₂² + h²)/6. Mathematics; a cap has r₁ = 0. */
export const segmentVolume = (bottomRadius: number, surfaceRadius: number, height: number): number =>
  (Math.PI * height * (3 * bottomRadius ** 2 + 3 * surfaceRadius ** 2 + height ** 2)) / 6;

/** A pan as a curved lower part (a slice of a sphere standing on a flat bottom) and a straight wall above it. */
export interface Vessel {
  /** Radius of the flat bottom, m; 0 for a round bottom. */
  readonly bottomRadius: number;
  /** Height of the sphere's centre above the bottom, m. */
  readonly centre: number;
  /** Height of the curved part, m; 0 for straight pans. */
  readonly curvedHeight: number;
  /** Area inside the straight wall, m². */
  readonly wallArea: number;
  /** From bottom to rim, m. */
  readonly depth: number;
}

/** Radius of the surface in the curved part squared, m²: r₁² + 2zh − h². Mathematics of the circle. */
export const curvedRadiusSquared = (v: Vessel, height: number): number => v.bottomRadius ** 2 + 2 * v.centre * height - height ** 2;

/** Volume below a height, m³. */
export function vesselVolume(v: Vessel, height: number): number {
  const curved = Math.min(height, v.curvedHeight);
  return segmentVolume(v.bottomRadius, Math.sqrt(Math.max(0, curvedRadiusSquared(v, curved))), curved) + v.wallArea * (height - curved);
}

/** Area of the surface at a height, m². */
export const vesselArea = (v: Vessel, height: number): number =>
  height <= v.curvedHeight && v.curvedHeight > 0 ? Math.PI * curvedRadiusSquared(v, height) : v.wallArea;

/** Height of so much liquid, m, at most the rim. Bisection, as the volume rises steadily with the height. */
export function vesselDepth(v: Vessel, volume: number): number {
  let low = 0;
  let high = v.depth;
  if (volume >= vesselVolume(v, high)) return high;
  for (let i = 0; i < 80 && high - low > 1e-15; i += 1) {
    const mid = (low + high) / 2;
    if (vesselVolume(v, mid) < volume) low = mid;
    else high = mid;
  }
  return (low + high) / 2;
}

/** A round-bottom pan: a cap; deeper than half its rim, half a sphere with a straight wall. */
export function roundVessel(rimDiameter: number, depth: number): Vessel {
  const a = rimDiameter / 2;
  const deep = depth > a;
  return { bottomRadius: 0, centre: deep ? a : capRadius(rimDiameter, depth), curvedHeight: deep ? a : depth, wallArea: Math.PI * a ** 2, depth };
}

/** A wok with a flat bottom: the slice of the sphere through its bottom edge and its rim; a straight wall once the slice would curve back in. */
export function flatWokVessel(rimDiameter: number, bottomDiameter: number, depth: number): Vessel {
  const a = rimDiameter / 2;
  const r1 = Math.min(bottomDiameter / 2, a);
  const centre = (a ** 2 + depth ** 2 - r1 ** 2) / (2 * depth);
  if (centre >= depth) return { bottomRadius: r1, centre, curvedHeight: depth, wallArea: Math.PI * a ** 2, depth };
  const height = Math.sqrt(Math.max(0, a ** 2 - r1 ** 2));
  return { bottomRadius: r1, centre: height, curvedHeight: height, wallArea: Math.PI * a ** 2, depth };
}

/** A pan with straight sides of an inside area, m². */
export const straightVessel = (area: number, depth: number): Vessel => ({ bottomRadius: 0, centre: 0, curvedHeight: 0, wallArea: area, depth });
