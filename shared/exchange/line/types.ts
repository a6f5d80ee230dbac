import type { Big } from 'big.js';
import type { UnitId } from '../../measure';

/** A number as a recipe gives it: one value, or a range from `low` to `high`. Exact; a third is kept to 30 decimals. */
export interface LineAmount {
  readonly low: Big;
  /** Upper end of "1-2"; absent for a single number. */
  readonly high?: Big;
}

/** An amount with a unit of measure, as written in a line. */
export interface Measured {
  readonly amount: LineAmount;
  readonly unit: UnitId;
}

/** What could be read of one ingredient line. Nothing in it is guessed; what was not understood stands in `rest`. */
export interface ReadLine {
  /** The line as it was written, always. */
  readonly text: string;
  /** Absent when the line gives none, or none that could be read. */
  readonly amount?: LineAmount;
  /** Unit of `amount`; absent when things are simply counted ("3 eggs") or counted in `countedIn`. */
  readonly unit?: UnitId;
  /** What the amount counts when that is no unit of measure: "can", "sprig", "head"; in the singular. */
  readonly countedIn?: string;
  /** The food, without amount and preparation; empty when none was found. */
  readonly item: string;
  /** "finely chopped", "drained", "optional". */
  readonly preparation?: string;
  /** How large each counted thing is: "2 (400 g) cans" is 2 times 400 g. */
  readonly pack?: { readonly count: LineAmount; readonly size: Measured };
  /** The same amount in another measure, as the line itself gives it: "1 cup (120 g)". */
  readonly also?: Measured;
  /** A remark beside the amount that is kept but not counted with: "about", "about 150 g". */
  readonly aside?: string;
  /** What the counted things weigh together, as the line itself says: "2 carrots (about 150 g)". */
  readonly weighs?: Measured;
  /** "to taste", "as needed": the amount, if any, is a start. */
  readonly toTaste: boolean;
  /** The part that was not understood and that the cook has to look at. */
  readonly rest?: string;
  /** `whole`: all understood. `part`: `rest` is left to the cook. `none`: no ingredient could be made of it. */
  readonly read: 'whole' | 'part' | 'none';
}
