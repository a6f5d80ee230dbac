import type { Figure } from '../figure';
import type { Message } from '../words';

/** What a real batch can tell. */
export type Told = 'pieceBatterG' | 'fryMinutes' | 'oilUptakeKgPerKg' | 'waterLostKgPerKg' | 'usefulShare';
/** Order in which it is shown. */
export const toldOrder = ['pieceBatterG', 'fryMinutes', 'waterLostKgPerKg', 'oilUptakeKgPerKg', 'usefulShare'] as const satisfies readonly Told[];

/** One value of the event that a real batch would replace. */
export interface Setting {
  readonly told: Told;
  /** Id of the recipe or the burner it belongs to. */
  readonly of: string;
  /** Value in force; null where the reference value of the kind is. */
  readonly before: number;
  /** Value to be written: the figure, rounded to what a kitchen can measure. */
  readonly after: number;
  readonly figure: Figure;
  /** Told by a drop of batter, or by one reading of the lowest temperature: less sure than weights and clock. */
  readonly rough: boolean;
}

/** What one real batch tells. */
export interface Calibration {
  readonly settings: readonly Setting[];
  /** Useful power of the burner into the pan, W; null when it cannot be told. */
  readonly usefulW: Figure | null;
  /** What is missing, what does not fit, what is less sure. */
  readonly notes: readonly Message[];
}
