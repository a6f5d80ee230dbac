import type { Figure } from '../figure';
import type { Minutes } from '../measure';
import type { ScaledLine } from '../menu';
import type { Message } from '../words';

/** What decides how many pieces go in at once. */
export type LoadLimit = 'space' | 'dip' | 'heat' | 'oilRatio' | 'rim';

/** How one dish fries in one pan of one station. */
export interface LoadPlan {
  readonly station: string;
  readonly pan: string;
  readonly dish: string;
  /** In the pan at once. */
  readonly pieces: Figure;
  readonly limitedBy: LoadLimit;
  /** Pieces each other limit would allow. */
  readonly limits: Readonly<Record<LoadLimit, Figure>>;
  readonly fryMinutes: number;
  /** Put in to put in. */
  readonly cycleMinutes: Figure;
  readonly dipC: Figure;
  readonly kgPerHour: Figure;
  /** What would let more in, with its gain. */
  readonly remedy: Message | null;
}

/** One frying. */
export interface Batch {
  /** Unique in the event, in order of put-in. */
  readonly number: number;
  readonly station: string;
  readonly pan: string;
  readonly dish: string;
  /** Numbers of the bowls it takes batter from; empty when there is no batter. */
  readonly bowls: readonly number[];
  readonly dropAt: Minutes;
  readonly liftAt: Minutes;
  readonly panFreeAt: Minutes;
  readonly eatBy: Minutes;
  readonly pieces: number;
  /** Id of the wave it mostly feeds. */
  readonly wave: string;
  /** When its pieces are expected to be eaten, first and last minute. */
  readonly eatenFrom: Minutes;
  readonly eatenTo: Minutes;
}

/** One mixing of finished batter. */
export interface Bowl {
  readonly number: number;
  readonly dish: string;
  readonly station: string;
  readonly mixAt: Minutes;
  readonly readyAt: Minutes;
  readonly useBy: Minutes;
  readonly batterKg: number;
  readonly pieces: number;
  readonly lines: readonly ScaledLine[];
}

/** Portions of a fried dish served and not served, per minute; served + unmet = demanded. */
export interface ServedPlan {
  readonly dish: string;
  readonly fromMinute: Minutes;
  readonly portions: readonly number[];
  readonly unmet: readonly number[];
}

/** A stretch in which the fry line cannot keep up. */
export interface Shortage {
  readonly dish: string;
  readonly from: Minutes;
  readonly to: Minutes;
  readonly wanted: number;
  readonly unmet: number;
  /** The smallest changes that serve everybody, each tried out. */
  readonly remedies: readonly Message[];
  /** No plan on these pans leaves fewer without. False when a quick rule answered, when several unequal pans share the dish by a rule, or when another dish has taken the pans first. */
  readonly proven: boolean;
  /** What is not proven, and why; null when all is. */
  readonly note: Message | null;
}

/** How long before it is wanted a dish comes out of the oil, on one line of equal pans. */
export interface LeadPlan {
  readonly dish: string;
  readonly station: string;
  /** Minutes the cook asked for. */
  readonly wanted: number;
  /** Minutes in force: as asked, or the longest that still serves everybody. */
  readonly minutes: number;
  /** Says that and why the lead was cut; null when it was not. */
  readonly note: Message | null;
}

/** A pan from heat-on to heat-off; somebody's attention is on it throughout. */
export interface OilSession {
  readonly station: string;
  readonly pan: string;
  readonly heatOnAt: Minutes;
  readonly readyAt: Minutes;
  readonly heatOffAt: Minutes;
}

/** Oil of one pan over the day. */
export interface OilPlan {
  readonly pan: string;
  readonly fillLitres: Figure;
  readonly uptakeLitres: Figure;
  readonly heatUpMinutes: Figure;
  /** Top up after these batches by so much. */
  readonly topUps: readonly { readonly afterBatch: number; readonly litres: number }[];
  /** Level with the largest load in the pan. */
  readonly loadedFreeRimMm: Figure;
  readonly loadedFillShare: Figure;
}

/** What the room `frying` computes. */
export interface FryingPlan {
  readonly loads: readonly LoadPlan[];
  readonly batches: readonly Batch[];
  readonly bowls: readonly Bowl[];
  readonly served: readonly ServedPlan[];
  readonly shortages: readonly Shortage[];
  readonly leads: readonly LeadPlan[];
  readonly sessions: readonly OilSession[];
  readonly oil: readonly OilPlan[];
  readonly fillLitres: Figure;
  readonly uptakeLitres: Figure;
  readonly buyLitres: Figure;
  readonly batchCount: Figure;
  readonly bowlCount: Figure;
  readonly batterKg: Figure;
  readonly pieces: Figure;
  /** Fried dishes no station fries, with what to do. */
  readonly problems: readonly Message[];
}
