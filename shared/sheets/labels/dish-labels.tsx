import { Fragment, type ReactElement } from 'react';
import { allergenIds, type AllergenId } from '../../event';
import type { DishPlan } from '../../menu';
import { say, sayLoose, type Formats } from '../../words';
import { midSentence } from '../food-name';
import type { PrintedRow, SheetContext, SheetDraft } from '../types';
import { contentsOfDish, contentsOfFoods, hasHoney, isMild, labelGroups, oilOf } from './contents';

/** "gluten, milk and sesame". */
export const allergenList = (f: Formats, ids: readonly AllergenId[]): string => f.list(ids.map((id) => sayLoose(f, `allergen.${id}`).toLowerCase()));

/** What else is declared in this kitchen, for every dish: all that any of the menu carries, those of the oil with it. */
function kitchenAllergens({ plan: { event, menu } }: SheetContext): readonly AllergenId[] {
  const foods = menu.dishes.flatMap((dish) => dish.recipe.ingredients.map((line) => line.ingredient));
  const { contains } = contentsOfFoods(event, foods);
  const oils = menu.dishes.flatMap((dish) => oilOf(event, dish, menu.dishes)?.carries ?? []);
  return allergenIds.filter((id) => contains.includes(id) || oils.includes(id));
}

function marksOf(dish: DishPlan, { plan: { event, menu }, formats: f }: SheetContext): readonly string[] {
  const { diets } = contentsOfDish(event, dish, menu.dishes);
  return [
    ...diets.filter((diet) => diet !== 'noOnionGarlic' || dish.servedAs !== 'cup').map((diet) => sayLoose(f, `diet.${diet}`)),
    ...(isMild(dish) ? [say(f, dish.role === 'plain' ? 'sheets.labels.plain' : 'sheets.labels.mild')] : []),
    ...(dish.recipe.brewing?.caffeinated === true ? [say(f, 'sheets.labels.caffeine')] : []),
    ...(hasHoney(dish) ? [say(f, 'sheets.labels.honey')] : []),
  ];
}

/** What the frying oil brings with it, in sentences; none for a dish that is not fried or an oil that brings nothing. */
function oilWords(dish: DishPlan, { plan: { event, menu }, formats: f }: SheetContext): readonly string[] {
  const oil = oilOf(event, dish, menu.dishes);
  if (oil === null) return [];
  const carried = allergenIds.filter((id) => oil.shared.some((other) => other.allergens.includes(id)));
  return [
    ...(oil.carries === null ? [say(f, 'sheets.labels.oilUnchecked')] : oil.carries.length > 0 ? [say(f, 'sheets.labels.oilCarries', { allergens: allergenList(f, oil.carries) })] : []),
    ...(carried.length > 0 ? [say(f, 'sheets.labels.oilShared', { dishes: f.list(oil.shared.map((other) => midSentence(other.dish))), allergens: allergenList(f, carried) })] : []),
  ];
}

function Card({ dish, context }: { readonly dish: DishPlan; readonly context: SheetContext }): ReactElement {
  const { plan: { event, menu }, formats: f, names } = context;
  const { contains, unchecked } = contentsOfDish(event, dish, menu.dishes);
  const marks = marksOf(dish, context);
  const others = kitchenAllergens(context).filter((id) => !contains.includes(id));
  const none = labelGroups(event).length === allergenIds.length ? 'sheets.labels.none14' : 'sheets.labels.none9';
  return (
    <section className="dishcard" data-card={dish.id}>
      <p className="name">{dish.name}</p>
      {marks.length > 0 && <p className="marks">{marks.map((mark, at) => <Fragment key={mark}>{at > 0 && ' '}<b>{mark}</b></Fragment>)}</p>}
      {contains.length > 0 && <p className="has">{say(f, 'sheets.labels.contains')} <strong>{allergenList(f, contains)}</strong></p>}
      {dish.broughtBy !== undefined && <p className="has"><strong>{say(f, 'sheets.labels.brought', { who: dish.broughtBy })}</strong></p>}
      {contains.length === 0 && unchecked.length === 0 && dish.broughtBy === undefined && <p className="has">{say(f, none)}</p>}
      {unchecked.length > 0 && <p className="has"><strong>{say(f, 'sheets.labels.unchecked', { foods: f.list(unchecked.map((id) => midSentence(names.ingredient(id)))) })}</strong></p>}
      {oilWords(dish, context).map((line) => <p key={line} className="oil">{line}</p>)}
      <p className="foot">{others.length > 0 && `${say(f, 'sheets.labels.kitchen', { allergens: allergenList(f, others) })} `}{say(f, 'sheets.labels.ask')}</p>
    </section>
  );
}

/** What a card says its dish contains, kept with the print: safety compares it with the dish later (rule AL-09). */
const printedCard = (dish: DishPlan): PrintedRow => ({ key: dish.id, name: dish.name, cells: { allergens: dish.allergens.join(' ') } });

/** Cards to stand beside the dishes: name, diets, what it contains or what nobody has checked, what the oil brings. No guest is on them. Not made when no dish is served to guests. */
export function dishLabelDrafts(context: SheetContext): readonly SheetDraft[] {
  const { plan, formats: f } = context;
  const served = plan.guests.adults.value + plan.guests.children.value === 0 ? [] : plan.menu.dishes.filter((dish) => dish.portions.value > 0 && dish.role !== 'water');
  if (served.length === 0) return [];
  const content = <div className="dishcards">{served.map((dish) => <Card key={dish.id} dish={dish} context={context} />)}</div>;
  return [{ kind: 'labels', id: 'labels', title: say(f, 'sheets.kind.labels'), note: say(f, 'sheets.labels.note'), rows: served.map(printedCard), content }];
}
