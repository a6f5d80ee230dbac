import { setTrial } from '../../../shared/edit';
import type { Trial } from '../../../shared/event';
import type { Names } from '../../../shared/sheets';
import type { Message } from '../../../shared/words';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Choice } from '../../parts/choice';
import { MeasureField } from '../../parts/measure-field';
import { NumberField } from '../../parts/number-field';

type Measured = 'beforeG' | 'afterG' | 'minutes' | 'startC' | 'lowestC' | 'backMinutes' | 'topUpMl';

const choice = (ids: readonly string[], name: (id: string) => string) => ids.map((value) => ({ value, text: name(value) }));

/** What was measured in one batch. Everything but the number of pieces may be left empty. */
export function TrialFields({ trial, names }: { readonly trial: Trial; readonly names: Names }) {
  const t = useSpeaker();
  const { event, plan, edit } = useDocument();
  const take = (patch: Partial<Trial>): Message | null => edit(setTrial(event, { ...trial, ...patch, taken: false }));
  const clear = (field: Measured) => (): Message | null => {
    const { [field]: _out, ...rest } = trial;
    return edit(setTrial(event, { ...rest, taken: false }));
  };
  const dishes = [...new Set([trial.dish, ...plan.frying.loads.map((l) => l.dish)])];
  const pans = [...new Set([trial.pan, ...event.kitchen.pans.map((p) => p.id)])];
  const unit = { g: 'g', min: t('view.kitchen.minutes') };
  return (
    <>
      <Choice label={t('view.frying.dish')} value={trial.dish} options={choice(dishes, names.dish)} onCommit={(dish) => take({ dish })} />
      <Choice label={t('view.frying.pan')} value={trial.pan} options={choice(pans, names.thing)} onCommit={(pan) => take({ pan })} />
      <NumberField label={t('view.trial.pieces')} value={trial.pieces} min={1} max={400} onCommit={(pieces) => take({ pieces })} />
      <NumberField label={t('view.trial.beforeG')} unit={unit.g} value={trial.beforeG ?? null} min={5} max={60000} step={5} decimals={1} onClear={clear('beforeG')} onCommit={(beforeG) => take({ beforeG })} />
      <NumberField label={t('view.trial.afterG')} unit={unit.g} value={trial.afterG ?? null} min={5} max={80000} step={5} decimals={1} onClear={clear('afterG')} onCommit={(afterG) => take({ afterG })} />
      <NumberField label={t('view.trial.minutes')} unit={unit.min} value={trial.minutes ?? null} min={0.25} max={30} step={0.25} decimals={2} onClear={clear('minutes')} onCommit={(minutes) => take({ minutes })} />
      <MeasureField label={t('view.trial.startC')} unit="°C" value={trial.startC ?? null} min={120} max={210} onClear={clear('startC')} onCommit={(startC) => take({ startC })} />
      <MeasureField label={t('view.trial.lowestC')} unit="°C" value={trial.lowestC ?? null} min={60} max={205} onClear={clear('lowestC')} onCommit={(lowestC) => take({ lowestC })} />
      <NumberField label={t('view.trial.backMinutes')} unit={unit.min} value={trial.backMinutes ?? null} min={0.25} max={90} step={0.25} decimals={2} onClear={clear('backMinutes')} onCommit={(backMinutes) => take({ backMinutes })} />
      <MeasureField label={t('view.trial.topUpMl')} unit="ml" value={trial.topUpMl ?? null} min={0} max={10000} step={10} onClear={clear('topUpMl')} onCommit={(topUpMl) => take({ topUpMl })} />
    </>
  );
}
