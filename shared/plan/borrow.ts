import { shoppingOf } from '../event';
import type { Figure } from '../figure';
import { safetyRule } from '../reference';
import type { Message } from '../words';
import type { Plan } from './types';

/** Something worth borrowing for the day, and why. */
export interface LoanIdea {
  /** The same as long as it is about the same thing: what is waved away stays away, and the line on the borrow list has it. */
  readonly id: string;
  /** What it is called on the borrow list. */
  readonly name: Message;
  /** How many; 1 or more. */
  readonly count: number;
  /** The trouble it ends, with its number. */
  readonly why: Message;
  /** The number behind it, where it has a working. */
  readonly figure?: Figure;
}

/** Pans and burners with which a fry line keeps up: the remedies of its shortages that a neighbour can lend. */
function forFrying({ event, frying, menu }: Plan): LoanIdea[] {
  const nameOf = (id: string): string => menu.dishes.find((d) => d.id === id)?.name ?? id;
  return frying.shortages.flatMap(({ dish, unmet, remedies }) => remedies.flatMap((remedy): LoanIdea[] => {
    const why: Message = { id: 'loan.why.shortage', params: { dish: nameOf(dish), unmet } };
    if (remedy.id === 'frying.shortage.pans') return [{ id: `pan-${dish}`, name: { id: 'loan.pan', params: { station: remedy.params.station } }, count: remedy.params.pans, why }];
    const pan = event.kitchen.pans.find((p) => frying.loads.some((l) => l.dish === dish && l.pan === p.id));
    const now = event.kitchen.burners.find((b) => b.id === pan?.burner)?.ratedW;
    return remedy.id === 'frying.shortage.burner' && now !== undefined ? [{ id: `burner-${dish}`, name: { id: 'loan.burner', params: { watts: now + remedy.params.watts } }, count: 1, why }] : [];
  }));
}

/** Flasks for drinks that nothing is there to serve from, an urn that heats its own water for what no pot can brew in time, tubs for the ice. */
function forDrinks({ drinks, menu }: Plan): LoanIdea[] {
  const idOf = (name: string): string => menu.dishes.find((d) => d.name === name)?.id ?? name;
  const flasks = drinks.problems.flatMap((p): LoanIdea[] => (p.id === 'drinks.problem.noVessel' ? [{ id: `flask-${idOf(p.params.drink)}`, name: { id: 'loan.flask', params: { drink: p.params.drink } }, count: 1, why: p }] : []));
  const urns = drinks.problems.flatMap((p): LoanIdea[] => (p.id === 'drinks.problem.unmet' ? [{ id: `urn-${idOf(p.params.drink)}`, name: { id: 'loan.urn', params: { drink: p.params.drink } }, count: 1, why: { id: 'loan.why.unbrewed', params: p.params } }] : []));
  const tubs: LoanIdea[] = drinks.ice === null ? [] : [{ id: 'ice-tub', name: { id: 'loan.tub' }, count: drinks.ice.tubs.value, why: { id: 'loan.why.ice', params: { kg: drinks.ice.kg.value } }, figure: drinks.ice.tubs }];
  return [...flasks, ...urns, ...tubs];
}

/** Cool boxes for what the fridge has no room for. */
const forTheCold = ({ safety }: Plan): LoanIdea[] => safety.findings.filter((f) => f.rule === safetyRule('CH-06').id).slice(0, 1).map(({ measured, limit }) =>
  ({ id: 'cool-box', name: { id: 'loan.coolBox', params: { litres: Math.ceil(measured.value - limit.value) } }, count: 1, why: { id: 'loan.why.cold', params: { need: measured.value, room: limit.value } } }));

/** Boxes and gas that would have to be bought for one day. */
function inPlaceOfBuying({ buying }: Plan): LoanIdea[] {
  return buying.lines.filter((l) => l.kind === 'thing' && l.buy.amount.gt(0)).flatMap((line): LoanIdea[] => {
    if (line.ingredient === 'food-boxes') return [{ id: 'food-boxes', name: { id: 'loan.boxes' }, count: Math.ceil(line.need.amount.minus(line.larder.amount).minus(line.bought.amount).toNumber()), why: { id: 'loan.why.boxes' }, figure: line.needFigure }];
    return line.ingredient === 'gas-bottle' ? [{ id: 'gas-bottle', name: { id: 'loan.gas', params: { kg: Math.ceil(line.need.amount.minus(line.larder.amount).toNumber() * 10 - 1e-9) / 10 } }, count: 1, why: { id: 'loan.why.gas', params: { kg: line.needFigure.value, has: line.larder.amount.toNumber() } }, figure: line.needFigure }] : [];
  });
}

/** Id of the line that an idea becomes on the borrow list. */
export const loanId = (idea: LoanIdea): string => `idea-${idea.id}`.slice(0, 64);

/**
 * What the plan would have somebody borrow, each with why: pans and burners for a fry line that cannot keep up, flasks and urns for drinks, tubs for
 * ice, cool boxes, food boxes, gas. What is on the borrow list in that number, or waved away, is left out. Worked out when asked: remedies are planned again.
 */
export function loanIdeas(plan: Plan): LoanIdea[] {
  const { borrowed, noLoans = [] } = shoppingOf(plan.event);
  const all = [...forFrying(plan), ...forDrinks(plan), ...forTheCold(plan), ...inPlaceOfBuying(plan)];
  const once = all.filter((idea, at) => all.findIndex((other) => other.id === idea.id) === at);
  return once.filter((idea) => !noLoans.includes(idea.id) && (borrowed.find((b) => b.id === loanId(idea))?.count ?? 0) < idea.count);
}
