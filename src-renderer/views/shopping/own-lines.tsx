import { addOwnLine, changeOwnLine, freshId, removeOwnLine } from '../../../shared/edit';
import { shoppingOf, type OwnLine } from '../../../shared/event';
import { sections } from '../../../shared/reference';
import { unitIds } from '../../../shared/measure';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Choice } from '../../parts/choice';
import { NumberField } from '../../parts/number-field';
import { TextField } from '../../parts/text-field';
import { AddThing, Thing, Things } from '../../parts/thing';
import { ViewSection } from '../../parts/view-page';
import { DayField } from './day-field';

function Line({ line }: { readonly line: OwnLine }) {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const change = (patch: Parameters<typeof changeOwnLine>[2]) => edit(changeOwnLine(event, line.id, patch));
  const places = [...sections.filter((s) => s.id !== 'tap').map((s) => ({ value: s.id, text: s.name })), { value: 'other', text: t('buying.section.other') }];
  return (
    <Thing name={line.name} removeText={t('view.shopping.remove')} remove={() => removeOwnLine(event, line.id)} fields={(
      <>
        <TextField label={t('view.shopping.name')} value={line.name} onCommit={(name) => change({ name })} />
        <NumberField label={t('view.shopping.amount')} value={Number(line.amount.amount)} min={0} max={1_000_000} decimals={3} onCommit={(v) => change({ amount: { ...line.amount, amount: String(v) } })} />
        <Choice label={t('view.shopping.unit')} value={line.amount.unit} options={unitIds.map((u) => ({ value: u, text: t.loose(`unit.${u}`, { count: 2 }) }))} onCommit={(unit) => change({ amount: { ...line.amount, unit } })} />
        <Choice label={t('view.shopping.section')} value={places.some((p) => p.value === line.section) ? line.section : 'other'} options={places} onCommit={(section) => change({ section })} />
        <DayField label={t('view.shopping.onDay')} value={line.when ?? ''} onCommit={(when) => change({ when: when === '' ? undefined : when })} />
      </>
    )} />
  );
}

/** The cook's own lines: what no recipe asks for. */
export function OwnLines() {
  const t = useSpeaker();
  const { event, readOnly } = useDocument();
  const { ownLines } = shoppingOf(event);
  if (readOnly) return null;
  return (
    <ViewSection title={t('view.shopping.ownTitle')} lead={t('view.shopping.ownLead')}>
      {ownLines.length > 0 && <Things>{ownLines.map((line) => <Line key={line.id} line={line} />)}</Things>}
      <AddThing add={() => addOwnLine(event, { id: freshId(ownLines, 'own'), name: t('view.shopping.newLine'), amount: { amount: '1', unit: 'piece' } })}>{t('view.shopping.addLine')}</AddThing>
    </ViewSection>
  );
}
