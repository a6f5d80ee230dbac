import { useState } from 'react';
import { changeBurner } from '../../../shared/edit';
import type { BoilTest, Burner } from '../../../shared/event';
import type { Message } from '../../../shared/words';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { MeasureField } from '../../parts/measure-field';
import { Measured } from '../../parts/measured';
import { NumberField } from '../../parts/number-field';

/** What a burner gives, by the minutes it takes to bring a known amount of water to the boil. Taken once litres and minutes are both there. */
export function BoilTestFields({ burner }: { readonly burner: Burner }) {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const [entered, setEntered] = useState<Partial<BoilTest>>({});
  const test: Partial<BoilTest> = { fromC: event.kitchen.waterC, potKg: event.kitchen.pots[0]?.massKg ?? 1.5, ...burner.boilTest, ...(burner.boilTest === undefined ? entered : {}) };
  const take = (patch: Partial<BoilTest>): Message | null => {
    const { litres, minutes, fromC, potKg } = { ...test, ...patch };
    setEntered((before) => ({ ...before, ...patch }));
    if (litres === undefined || minutes === undefined || fromC === undefined || potKg === undefined) return null;
    // A measurement stands above a share somebody entered earlier.
    return edit(changeBurner(event, burner.id, { boilTest: { ...burner.boilTest, litres, minutes, fromC, potKg }, usefulShare: undefined }));
  };
  return (
    <Measured title={t('view.kitchen.boilTest')} how={t('view.kitchen.boilTest.how')} open={burner.boilTest !== undefined}
      forget={burner.boilTest === undefined ? undefined : { text: t('view.kitchen.forgetTest'), onPress: () => { setEntered({}); edit(changeBurner(event, burner.id, { boilTest: undefined })); } }}>
      <MeasureField label={t('view.kitchen.testLitres')} unit="L" value={test.litres ?? null} min={0.5} max={60} step={0.5} decimals={2} onCommit={(litres) => take({ litres })} />
      <MeasureField label={t('view.kitchen.testFrom')} unit="°C" value={test.fromC ?? null} min={1} max={60} decimals={1} onCommit={(fromC) => take({ fromC })} />
      <MeasureField label={t('view.kitchen.testPot')} unit="kg" value={test.potKg ?? null} min={0} max={60} step={0.1} decimals={2} onCommit={(potKg) => take({ potKg })} />
      <NumberField label={t('view.kitchen.testMinutes')} unit={t('view.kitchen.minutes')} value={test.minutes ?? null} min={1} max={180} decimals={1} onCommit={(minutes) => take({ minutes })} />
    </Measured>
  );
}
