import type { LoadPlan } from '../frying';
import type { Plan } from '../plan';

/** Frying as other programs read it. */
export interface FryingJson {
  /** Longest time from lifting out to eating of any batch. */
  readonly holdMinutes: number;
  readonly batches: readonly {
    readonly number: number; readonly station: string; readonly pan: string; readonly dish: string; readonly bowls: readonly number[];
    readonly dropAt: number; readonly liftAt: number; readonly panFreeAt: number; readonly eatBy: number; readonly pieces: number;
  }[];
  readonly bowls: readonly { readonly number: number; readonly mixAt: number; readonly readyAt: number; readonly useBy: number; readonly batterKg: number; readonly pieces: number }[];
  readonly served: readonly { readonly dish: string; readonly fromMinute: number; readonly portions: readonly number[]; readonly unmet: readonly number[] }[];
  readonly limits: readonly { readonly station: string; readonly pan: string; readonly dish: string; readonly pieces: number; readonly limitedBy: string; readonly others: Readonly<Record<string, number>> }[];
  readonly oil: { readonly fillLitres: number; readonly uptakeLitres: number; readonly buyLitres: number };
}

/** Pieces each limit other than the ruling one would allow; a limit that does not bind at all is left out. */
const others = (load: LoadPlan): Record<string, number> => Object.fromEntries(
  Object.entries(load.limits).filter(([limit, pieces]) => limit !== load.limitedBy && Number.isFinite(pieces.value)).map(([limit, pieces]) => [limit, pieces.value]));

/** The fry line of a plan: batches, bowls, what is served, what limits the load, oil. */
export function fryingJson({ frying, menu }: Plan): FryingJson {
  const recipeHolds = menu.dishes.flatMap((d) => (d.recipe.frying === undefined ? [] : [d.recipe.frying.holdMinutes]));
  const holds = frying.batches.map((b) => b.eatBy - b.liftAt);
  return {
    holdMinutes: Math.max(0, ...(holds.length > 0 ? holds : recipeHolds)),
    batches: frying.batches.map(({ number, station, pan, dish, bowls, dropAt, liftAt, panFreeAt, eatBy, pieces }) =>
      ({ number, station, pan, dish, bowls, dropAt, liftAt, panFreeAt, eatBy, pieces })),
    bowls: frying.bowls.map(({ number, mixAt, readyAt, useBy, batterKg, pieces }) => ({ number, mixAt, readyAt, useBy, batterKg, pieces })),
    served: frying.served.map(({ dish, fromMinute, portions, unmet }) => ({ dish, fromMinute, portions, unmet })),
    limits: frying.loads.map((load) => ({ station: load.station, pan: load.pan, dish: load.dish, pieces: load.pieces.value, limitedBy: load.limitedBy, others: others(load) })),
    oil: { fillLitres: frying.fillLitres.value, uptakeLitres: frying.uptakeLitres.value, buyLitres: frying.buyLitres.value },
  };
}
