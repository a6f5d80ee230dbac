import type { Brewing, Pot } from '../event';
import { boilOffKgPerHour, heatMinutes, type BurnerState } from '../kitchen';
import type { DishPlan } from '../menu';
import type { BrewPlace } from './brew-place';
import { linesOf, otherLiquids } from './round-lines';
import { waterForServed } from './rules';

/** One potful: what goes in, and how long it takes. Litres, minutes. */
export interface RoundSize {
  readonly litres: number;
  /** Liquids of the recipe other than water; what boils away; water from the tap; minutes to the boil, not rounded. */
  readonly others: number;
  readonly evaporated: number;
  readonly water: number;
  readonly heat: number;
  /** Everything liquid in the pot. */
  readonly potLitres: number;
  /** Minutes on the burner: to the boil, then boiling. */
  readonly burnerMinutes: number;
  /** Start to ready. */
  readonly minutes: number;
  readonly boilMinutes: number;
  /** Minutes of hands at the start and at the end; together never more than `minutes`. */
  readonly startHands: number;
  readonly finishHands: number;
}

/** True when the drink is made on a burner. */
export const isBrewed = (b: Brewing): boolean => b.method !== 'cold' && b.method !== 'water';

/** Litres of a round's liquids other than water, by litres served; remembered, as every pot and burner asks again. */
export function liquidsBeside(dish: DishPlan, brewing: Brewing): (litres: number) => number {
  const known = new Map<number, number>();
  return (litres) => {
    const found = known.get(litres) ?? otherLiquids(linesOf(dish, brewing, litres));
    known.set(litres, found);
    return found;
  };
}

/** A round of so many litres served with `others` litres of other liquids, made on a burner (null for what needs none) in a pot. */
export function roundSize(place: BrewPlace, brewing: Brewing, litres: number, others: number, pot: Pot, burner: BurnerState | null): RoundSize {
  const { values, event } = place;
  const evaporated = burner === null ? 0 : (boilOffKgPerHour(burner.usefulW.value / 1000, values.latent.value) * brewing.boilMinutes) / 60;
  // Leaf is dosed on all liquid; liquids of the recipe other than water come off.
  const water = Math.max(0, waterForServed(litres / (1 - brewing.strainLoss), brewing.doseGPerL, brewing.absorbMlPerG, evaporated) - others);
  const heated = isBrewed(brewing);
  const second = brewing.milkShare > 0 ? values.milk : values.water;
  const heat = burner === null || !heated ? 0
    : heatMinutes(1, water * values.water.value + others * second.value, pot.massKg * values.metal.value, values.boil.value - event.kitchen.waterC, burner.usefulW.value / 1000);
  const boilMinutes = Math.ceil(heat - 1e-9);
  const boiling = heated ? Math.ceil(brewing.boilMinutes) : 0;
  const cooling = heated && !brewing.hot ? values.coolMinutes : 0;
  const minutes = boilMinutes + boiling + Math.ceil(brewing.steepMinutes) + values.pourMinutes + cooling;
  return { litres, others, evaporated, water, heat, potLitres: water + others, boilMinutes, burnerMinutes: boilMinutes + boiling, minutes, ...handsOf(place, minutes, burner) };
}

/** Hands of a round: all of a short one that needs no burner, else a little at the start and the straining and pouring at the end. */
function handsOf({ values }: BrewPlace, minutes: number, burner: BurnerState | null): Pick<RoundSize, 'startHands' | 'finishHands'> {
  if (burner === null && minutes <= values.shortRound) return { startHands: minutes, finishHands: 0 };
  const finishHands = Math.min(values.pourMinutes, minutes);
  return { startHands: Math.min(values.startMinutes, minutes - finishHands), finishHands };
}
