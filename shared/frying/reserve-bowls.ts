import type { DishPlan } from '../menu';
import type { Bowl, FryingPlan } from './types';

/** Bowls of one dish that are finished only when more come than on an average day: until then they are measured dry mix. */
export interface ReserveBowls {
  readonly dish: string;
  /** All bowls of the dish; at least one. */
  readonly all: number;
  /** Bowls of an average day; the rest is reserve. */
  readonly usual: number;
  /** Numbers of the reserve bowls: those finished last. */
  readonly numbers: readonly number[];
  /** Part of all the batter that is in them, 0-1. */
  readonly share: number;
}

const kg = (bowls: readonly Bowl[]): number => bowls.reduce((sum, b) => sum + b.batterKg, 0);

/** Which bowls are reserve: as many as are left when the expected portions have their whole bowls. Dishes without a reserve are left out. */
export function reserveBowls(dishes: readonly DishPlan[], { bowls }: Pick<FryingPlan, 'bowls'>): ReserveBowls[] {
  return dishes.flatMap(({ id, portions, reserve }): ReserveBowls[] => {
    const own = bowls.filter((b) => b.dish === id).toSorted((a, b) => a.mixAt - b.mixAt || a.number - b.number);
    if (own.length === 0 || reserve === undefined || portions.value <= 0) return [];
    const usual = Math.ceil(own.length * Math.max(0, 1 - reserve.value / portions.value) - 1e-9);
    const late = own.slice(usual);
    return late.length === 0 ? [] : [{ dish: id, all: own.length, usual, numbers: late.map((b) => b.number), share: kg(late) / kg(own) }];
  });
}
