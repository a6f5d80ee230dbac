import { addBorrowed, changeBorrowed, freshId, removeBorrowed } from '../../../shared/edit';
import { shoppingOf, type Borrowed } from '../../../shared/event';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { NumberField } from '../../parts/number-field';
import { TextField } from '../../parts/text-field';
import { AddThing, Thing, Things } from '../../parts/thing';
import { Tick } from '../../parts/tick';
import { ViewSection } from '../../parts/view-page';
import { LoanIdeas } from './loan-ideas';

function Lent({ lent }: { readonly lent: Borrowed }) {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const change = (patch: Parameters<typeof changeBorrowed>[2]) => edit(changeBorrowed(event, lent.id, patch));
  return (
    <Thing name={lent.name} removeText={t('view.shopping.remove')} remove={() => removeBorrowed(event, lent.id)} fields={(
      <>
        <TextField label={t('view.shopping.name')} value={lent.name} onCommit={(name) => change({ name })} />
        <NumberField label={t('view.shopping.count')} value={lent.count} min={1} max={10_000} onCommit={(count) => change({ count })} />
        <TextField label={t('buying.lent.fromHead')} value={lent.from} onCommit={(from) => change({ from })} />
        <Tick label={t('buying.lent.hereHead')} checked={lent.here} onChange={(here) => { change({ here }); }} />
        <Tick label={t('buying.lent.returnedHead')} checked={lent.returned} onChange={(returned) => { change({ returned }); }} />
      </>
    )} />
  );
}

/** What is needed and not owned: chairs, cool boxes, a second pan; from whom, and whether it has gone back. */
export function BorrowSection() {
  const t = useSpeaker();
  const { event, readOnly } = useDocument();
  const { borrowed } = shoppingOf(event);
  if (readOnly) return null;
  return (
    <ViewSection title={t('buying.section.borrow')} lead={t('view.shopping.borrowLead')}>
      {borrowed.length > 0 && <Things>{borrowed.map((lent) => <Lent key={lent.id} lent={lent} />)}</Things>}
      <LoanIdeas />
      <AddThing add={() => addBorrowed(event, { id: freshId(borrowed, 'lent'), name: t('view.shopping.newBorrowed') })}>{t('view.shopping.addBorrowed')}</AddThing>
    </ViewSection>
  );
}
