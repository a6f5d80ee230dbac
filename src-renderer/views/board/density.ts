import { createContext, useContext } from 'react';

/** Heights of the lanes' rows, in pixels. */
export interface Density {
  readonly curve: number;
  readonly curveTop: number;
  readonly block: number;
  readonly panTop: number;
  readonly panBar: number;
  readonly panNumbers: number;
  readonly bowl: number;
  readonly drinkTop: number;
  readonly drink: number;
  readonly meal: number;
  readonly handsTop: number;
  readonly hands: number;
  /** There is room for what the marks mean. */
  readonly legends: boolean;
}

const roomy: Density = { curve: 92, curveTop: 22, block: 52, panTop: 20, panBar: 25, panNumbers: 19, bowl: 25, drinkTop: 18, drink: 34, meal: 26, handsTop: 20, hands: 26, legends: true };
const tight: Density = { curve: 62, curveTop: 18, block: 50, panTop: 20, panBar: 20, panNumbers: 19, bowl: 23, drinkTop: 4, drink: 27, meal: 22, handsTop: 4, hands: 22, legends: false };

/** How tall the lanes may be where `height` pixels are left for them: tight only where that is what keeps all five in sight. */
export const densityFor = (height: number): Density => (height >= 660 ? roomy : tight);

/** The row heights of the lanes around a component. */
export const DensityContext = createContext<Density>(roomy);
/** The row heights of the lanes around a component. */
export const useDensity = (): Density => useContext(DensityContext);
