import type { ReactElement } from 'react';
import { say } from '../../words';
import { shiftDay } from '../calendar';
import type { SheetContext, SheetDraft } from '../types';
import { boxAmount, keptUntil, keptWhat } from './box-words';
import { contentsOfFoods } from './contents';
import { allergenList } from './dish-labels';
import { keptThings, type KeptThing } from './kept-things';
import { leftovers, type Leftover } from './leftover';

/** "Contains milk and sesame", "not checked: …", or that nothing listed is in it. */
function Contains({ foods, context: { plan, formats: f, names } }: { readonly foods: readonly string[]; readonly context: SheetContext }): ReactElement {
  const { contains, unchecked } = contentsOfFoods(plan.event, foods);
  const parts = [
    ...(contains.length > 0 ? [`${say(f, 'sheets.labels.contains')} ${allergenList(f, contains)}`] : unchecked.length === 0 ? [say(f, 'sheets.boxes.noAllergens')] : []),
    ...(unchecked.length > 0 ? [say(f, 'sheets.labels.unchecked', { foods: f.list(unchecked.map(names.ingredient)) })] : []),
  ];
  return <p className="has">{parts.join('. ')}</p>;
}

const allFoods = ({ dish }: Pick<KeptThing, 'dish'>): readonly string[] => dish.recipe.ingredients.map((line) => line.ingredient);

function Label({ thing, at, context }: { readonly thing: KeptThing; readonly at: number; readonly context: SheetContext }): ReactElement {
  const { plan: { event }, formats: f } = context;
  const count = thing.boxes.count.value;
  return (
    <section className="boxlabel" data-box={thing.key}>
      <p className="what">{keptWhat(thing, context)}{count > 1 && <span>{say(f, 'sheets.boxes.of', { at, of: count })}</span>}</p>
      {thing.foods !== null && <p className="forwhat">{say(f, 'sheets.boxes.for', { dish: thing.dish.name })}</p>}
      <dl>
        <dt>{say(f, 'sheets.boxes.amount')}</dt><dd>{boxAmount(thing, at, f)}</dd>
        <dt>{say(f, 'sheets.boxes.made')}</dt><dd>{f.date(shiftDay(event.day, Math.floor(thing.madeAt / 1440)))}</dd>
        <dt>{say(f, 'sheets.boxes.keep')}</dt><dd>{say(f, `sheets.boxes.place.${thing.keeps.place}`)}</dd>
        <dt>{say(f, 'sheets.boxes.useBy')}</dt><dd className="by">{keptUntil(thing, event.day, f)}</dd>
      </dl>
      <Contains foods={thing.foods ?? allFoods(thing)} context={context} />
    </section>
  );
}

function Left({ left, context }: { readonly left: Leftover; readonly context: SheetContext }): ReactElement {
  const { plan: { event }, formats: f } = context;
  return (
    <section className="boxlabel" data-left={left.dish.id}>
      <p className="what">{left.dish.name}<span>{say(f, 'sheets.boxes.left')}</span></p>
      <dl>
        <dt>{say(f, 'sheets.boxes.amount')}</dt><dd className="blank" />
        <dt>{say(f, 'sheets.boxes.keep')}</dt><dd>{say(f, 'sheets.boxes.place.cold')}</dd>
        <dt>{say(f, 'sheets.boxes.useBy')}</dt><dd className="by">{keptUntil({ madeAt: left.dish.lastServed ?? event.closesAt, useBy: left.useBy }, event.day, f)}</dd>
      </dl>
      {left.reheatC !== null && <p>{say(f, 'sheets.boxes.reheat', { celsius: left.reheatC })}</p>}
      <Contains foods={allFoods(left)} context={context} />
    </section>
  );
}

/** Labels to cut out for every box and bag: what is made ahead, then one for each dish that may be left over. Not made when nothing is kept. */
export function boxDrafts(context: SheetContext): readonly SheetDraft[] {
  const { plan, formats: f } = context;
  const things = keptThings(plan);
  const left = leftovers(plan);
  if (things.length === 0 && left.length === 0) return [];
  const content = (
    <>
      {things.length > 0 && <div className="boxlabels">
        {things.flatMap((thing) => Array.from({ length: thing.boxes.count.value }, (_, at) => <Label key={`${thing.key} ${at}`} thing={thing} at={at + 1} context={context} />))}
      </div>}
      {left.length > 0 && (
        <>
          <h2 className="boxhead">{say(f, 'sheets.boxes.leftHead')}</h2>
          <p className="boxlead">{say(f, 'sheets.boxes.leftLead')}</p>
          <div className="boxlabels">{left.map((one) => <Left key={one.dish.id} left={one} context={context} />)}</div>
        </>
      )}
    </>
  );
  return [{ kind: 'boxes', id: 'boxes', title: say(f, 'sheets.kind.boxes'), note: say(f, 'sheets.boxes.note'), rows: [], content }];
}
