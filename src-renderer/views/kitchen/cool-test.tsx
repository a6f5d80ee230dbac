import { useState } from 'react';
import { changeDispenser } from '../../../shared/edit';
import type { CoolTest, Dispenser } from '../../../shared/event';
import type { Message } from '../../../shared/words';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { MeasureField } from '../../parts/measure-field';
import { Measured } from '../../parts/measured';
import { NumberField } from '../../parts/number-field';

/** How fast a flask cools, by two readings of hot water left to stand in it. Taken once both are there. */
export function CoolTestFields({ dispenser }: { readonly dispenser: Dispenser }) {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const [entered, setEntered] = useState<Partial<CoolTest>>({});
  const test: Partial<CoolTest> = { minutes: 60, roomC: event.kitchen.roomC, ...dispenser.coolTest, ...(dispenser.coolTest === undefined ? entered : {}) };
  const take = (patch: Partial<CoolTest>): Message | null => {
    const { startC, endC, minutes, roomC } = { ...test, ...patch };
    setEntered((before) => ({ ...before, ...patch }));
    if (startC === undefined || endC === undefined || minutes === undefined || roomC === undefined) return null;
    return edit(changeDispenser(event, dispenser.id, { coolTest: { ...dispenser.coolTest, startC, endC, minutes, roomC } }));
  };
  return (
    <Measured title={t('view.kitchen.coolTest')} how={t('view.kitchen.coolTest.how')} open={dispenser.coolTest !== undefined}
      forget={dispenser.coolTest === undefined ? undefined : { text: t('view.kitchen.forgetTest'), onPress: () => { setEntered({}); edit(changeDispenser(event, dispenser.id, { coolTest: undefined })); } }}>
      <MeasureField label={t('view.kitchen.testFirst')} unit="°C" value={test.startC ?? null} min={30} max={100} decimals={1} onCommit={(startC) => take({ startC })} />
      <NumberField label={t('view.kitchen.testAfter')} unit={t('view.kitchen.minutes')} value={test.minutes ?? null} min={10} max={1440} onCommit={(minutes) => take({ minutes })} />
      <MeasureField label={t('view.kitchen.testLater')} unit="°C" value={test.endC ?? null} min={20} max={100} decimals={1} onCommit={(endC) => take({ endC })} />
      <MeasureField label={t('view.kitchen.testRoom')} unit="°C" value={test.roomC ?? null} min={-20} max={45} decimals={1} onCommit={(roomC) => take({ roomC })} />
    </Measured>
  );
}
