/** Diameter of a spooned piece, m: an ellipsoid of thickness/diameter `aspect`. Mass kg, density kg/m³. Mathematics. */
export const pieceDiameter = (mass: number, density: number, aspect: number): number => ((6 * mass) / density / (Math.PI * aspect)) ** (1 / 3);

/**
 * Seconds until the middle of a sphere reaches a temperature with its surface held at another: first term of the series solution,
 * Fo = ln(2/θ)/π², θ = (Ts − Tc)/(Ts − T0). Good for θ below about 0.6; an upper bound for flatter pieces.
 */
export const centreSeconds = (radius: number, diffusivity: number, start: number, surface: number, centre: number): number =>
  (Math.log(2 / ((surface - centre) / (surface - start))) / Math.PI ** 2) * (radius ** 2 / diffusivity);

/** Time constant of a piece cooling on a rack, s: m c / (h π d²) for a ball of diameter d. kg, J/kgK, W/m²K, m. Newton's law of cooling. */
export const coolingConstant = (mass: number, cp: number, h: number, diameter: number): number => (mass * cp) / (h * Math.PI * diameter ** 2);
