import { useState } from 'react';
import { canOfferDecaf, offerDecaf } from '../../../shared/edit';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Button } from '../../parts/button';

/** Share of a drink that is offered without caffeine to begin with. Common practice, no source; changed on the menu like any other share. */
const startShare = 0.25;

/** For each drink with caffeine whose leaf or grounds are sold without: a way to offer part of it so. Gone once there is one. */
export function DecafOffers() {
  const t = useSpeaker();
  const { event, plan, edit } = useDocument();
  const [problem, setProblem] = useState<string | null>(null);
  const offered = plan.menu.dishes.filter((d) => canOfferDecaf(event, d.id) && !event.recipes.some((r) => r.id.startsWith(`${d.recipe.id}-decaf-`)));
  if (offered.length === 0) return null;
  return (
    <p>
      {t('view.drinks.noCaffeine')}{' '}
      {offered.map((d) => (
        <span key={d.id}>
          <Button kind="link" label={t('view.drinks.offerDecaf', { drink: d.name })} onPress={() => {
            const answer = edit(offerDecaf(event, d.id, startShare, t('view.drinks.decafName', { drink: d.name })));
            setProblem(answer === null ? null : t.message(answer));
          }}>{d.name}</Button>{' '}
        </span>
      ))}
      {problem !== null && <span role="alert">{problem}</span>}
    </p>
  );
}
