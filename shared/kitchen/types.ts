import type { Burner, Pan } from '../event';
import type { Figure } from '../figure';

/** A pan with its oil, cold and hot. */
export interface PanState {
  readonly pan: Pan;
  readonly fullLitres: Figure;
  readonly hotOilLitres: Figure;
  readonly hotDepthMm: Figure;
  readonly surfaceDiameterMm: Figure;
  /** Share of the pan's volume filled by hot oil, 0-1. */
  readonly fillShare: Figure;
  /** Rim above the hot, unloaded oil. */
  readonly freeRimMm: Figure;
  readonly burner: BurnerState;
}
/** A burner and what reaches the pan. */
export interface BurnerState {
  readonly burner: Burner;
  readonly usefulW: Figure;
}
/** What the room `kitchen` computes. */
export interface KitchenPlan {
  readonly pans: readonly PanState[];
  readonly burners: readonly BurnerState[];
}
