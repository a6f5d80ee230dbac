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
  /** In whole minutes, as the clock of put in and lift out has it. */
  readonly fryMinutes: number;
  /** As the recipe says, minutes; halves are worth telling. */
  readonly recipeMinutes: number;
  /** Put in to put in. */
  readonly cycleMinutes: Figure;
  readonly dipC: Figure;
  readonly kgPerHour: Figure;
  /** What would let more in, with its gain: the easiest of `remedies`. */
  readonly remedy: Message | null;
  /** Everything that would let more in, each worked out again with its gain, the easiest first; the last is another pan. */
  readonly remedies: readonly Message[];
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
  /** The smallest change of each kind that serves everybody, each planned again from the guests to the batches; worked out when first asked for. */
  readonly remedies: readonly Message[];
  /** No plan on these pans leaves fewer without. False when a quick rule answered, when several unequal pans share the dish by a rule, or when another dish has taken the pans first. */
  readonly proven: boolean;
  /** What is not proven, and why; null when all is. */
  readonly note: Message | null;
}

/** How many of all fried dishes go short, and how many would in any plan on these pans. */
export interface UnmetBound {
  readonly unmet: Figure;
  /** No plan leaves fewer without: proven, but perhaps no plan comes down to it. */
  readonly atLeast: Figure;
  /** What is not proven: `unmet` less `atLeast`. */
  readonly gap: Figure;
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

/** A pause of one pan between two batches that is long enough to decide about the heat. */
export interface OilPause {
  readonly station: string;
  readonly pan: string;
  /** The pan is free. */
  readonly from: Minutes;
  /** The next batch goes in. */
  readonly to: Minutes;
  /** `off`: heat off at `from`, lit again at `lightAt`; `low`: heat low, somebody beside it all the time. */
  readonly decision: 'off' | 'low';
  readonly lightAt: Minutes;
  /** Oil at the end of the pause if the heat were off, °C, and minutes to heat it again from there. */
  readonly cooledC: Figure;
  readonly reheatMinutes: Figure;
  /** Gas or current of either way, kWh. */
  readonly lowKwh: Figure;
  readonly offKwh: Figure;
  /** The same as bottled gas, kg; null where the burner burns none. */
  readonly lowKg: Figure | null;
  readonly offKg: Figure | null;
}

/** Temperature of a pan's oil, °C, one value a minute: the lowest in that minute. */
export interface OilCurve {
  readonly fromMinute: Minutes;
  readonly celsius: readonly number[];
}

/** What becomes of the oil of one pan. */
export interface OilEnd {
  readonly pan: string;
  /** Fresh oil after these batches; empty when one fill does. */
  readonly changeAfter: readonly number[];
  /** Batter fried for each litre of oil poured in all. */
  readonly batterPerLitre: Figure;
  readonly leftLitres: Figure;
  /** Minutes until it may be moved, by its own cooling; the house rule of hours may be longer. */
  readonly coolMinutes: Figure;
  /** When it may be moved: the later of the two. */
  readonly movableAt: Minutes;
  /** Worked out when asked for. */
  readonly curve: OilCurve;
}

/** How long fried pieces of a dish wait for whoever eats them. */
export interface WaitPlan {
  readonly dish: string;
  /** Minutes from lift to eating, all pieces together. */
  readonly minutes: Figure;
  /** The same for one piece, on average. */
  readonly perPiece: Figure;
  readonly smallestBatch: number;
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
  /** No plan has fewer batches: each dish's fewest with its pans to itself, added up. Equal to `batchCount` when the plan is proven the best. */
  readonly batchBound: Figure;
  /** Null when nobody goes short. Worked out when asked for. */
  readonly unmetBound: UnmetBound | null;
  readonly waits: readonly WaitPlan[];
  /** Pauses in which something has to be decided about the heat. */
  readonly pauses: readonly OilPause[];
  readonly oilEnds: readonly OilEnd[];
  /** Dishes that go into oil in which another has left crumbs, taste or allergens. */
  readonly care: readonly Message[];
  readonly bowlCount: Figure;
  readonly batterKg: Figure;
  readonly pieces: Figure;
  /** Fried dishes no station fries, with what to do. */
  readonly problems: readonly Message[];
}
