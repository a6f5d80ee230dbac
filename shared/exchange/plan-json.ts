import { formatsFor } from '../event';
import { amountText, type Amount, type AmountText } from '../measure';
import type { Plan } from '../plan';
import { sayMessage, type Formats } from '../words';
import { dayJson, type DayJson } from './day-json';
import { drinksJson, type DrinksJson } from './drinks-json';
import { fryingJson, type FryingJson } from './frying-json';

/** The plan as other programs read it: minutes from the event day's midnight; amounts as decimal strings; arrays per minute start at `fromMinute`. */
export interface PlanJson {
  readonly guests: {
    readonly adults: number;
    readonly children: number;
    readonly presence: { readonly fromMinute: number; readonly expected: readonly number[]; readonly p10: readonly number[]; readonly p90: readonly number[] };
  };
  readonly menu: { readonly dishes: readonly DishJson[] };
  readonly shopping: { readonly lines: readonly ShoppingLineJson[] };
  readonly frying: FryingJson;
  readonly drinks: DrinksJson;
  readonly day: DayJson;
  readonly safety: {
    readonly findings: readonly { readonly rule: string; readonly level: string; readonly measured: Measured; readonly limit: Measured; readonly message: string }[];
    readonly notChecked: readonly { readonly rule: string; readonly needs: string }[];
  };
}
interface Measured { readonly value: number; readonly unit: string }
interface DishJson {
  readonly id: string;
  readonly name: string;
  readonly portions: number;
  readonly total: AmountText;
  readonly demand: { readonly fromMinute: number; readonly portions: readonly number[] };
}
interface ShoppingLineJson {
  /** Unique on the list; an ingredient may have several lines. */
  readonly key: string;
  readonly ingredient: string;
  readonly need: AmountText;
  readonly buy: AmountText;
  readonly packs: readonly { readonly count: number; readonly size: AmountText }[];
  readonly origins: readonly { readonly dish: string; readonly amount: AmountText }[];
  readonly cost?: string;
}

const textOf = (amount: Amount): AmountText => amountText(amount);

/** The plan for `brimful plan --json`. Sentences are in the words of `formats`; numbers are not rounded. */
export function planJson(plan: Plan, formats: Formats = formatsFor(plan.event.preferences, plan.event.day)): PlanJson {
  const { guests, menu, buying, safety } = plan;
  const { fromMinute, expected, p10, p90 } = guests.presence;
  return {
    guests: { adults: guests.adults.value, children: guests.children.value, presence: { fromMinute, expected, p10, p90 } },
    menu: {
      dishes: menu.dishes.map((d) => ({
        id: d.id, name: d.name, portions: d.portions.value, total: textOf(d.total),
        demand: { fromMinute: d.demand.fromMinute, portions: d.demand.values },
      })),
    },
    shopping: {
      lines: buying.lines.map((line) => ({
        key: line.key, ingredient: line.ingredient, need: textOf(line.need), buy: textOf(line.buy),
        packs: line.packs.map(({ count, size }) => ({ count, size: textOf(size) })),
        origins: line.origins.map(({ dish, amount }) => ({ dish, amount: textOf(amount) })),
        ...(line.cost === undefined ? {} : { cost: line.cost }),
      })),
    },
    frying: fryingJson(plan),
    drinks: drinksJson(plan),
    day: dayJson(plan, formats),
    safety: {
      findings: safety.findings.map(({ rule, level, measured, limit, message }) => ({ rule, level, measured, limit, message: sayMessage(formats, message) })),
      notChecked: safety.notChecked.map(({ rule, needs }) => ({ rule, needs: sayMessage(formats, needs) })),
    },
  };
}
