import type { ReactElement } from 'react';
import { say, sayLoose } from '../../words';
import type { SheetContext } from '../types';

/** Guests' allergies with what is not for them. Printed only when the event asks for it; nothing otherwise. */
export function Allergies({ context: { plan, formats: f, names } }: { readonly context: SheetContext }): ReactElement | null {
  if (!plan.event.preferences.printAllergies || plan.menu.allergies.length === 0) return null;
  return (
    <section className="allergies">
      <h3>{say(f, 'sheets.allergies.head')}</h3>
      {plan.menu.allergies.map((a) => (
        <p key={a.allergen}>
          {say(f, 'sheets.allergies.line', { allergen: sayLoose(f, `allergen.${a.allergen}`), people: a.people, dishes: f.list(a.containing.map(names.dish)) })}
        </p>
      ))}
    </section>
  );
}
