import type { ReactNode } from 'react';
import { setPrecautions } from '../../../shared/edit';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Choice } from '../../parts/choice';
import { MeasureField } from '../../parts/measure-field';
import { NumberField } from '../../parts/number-field';
import { TextField } from '../../parts/text-field';
import { ViewSection } from '../../parts/view-page';
import styles from './precautions.module.css';

type YesNoKey = 'lidAtHand' | 'thermometer' | 'childLine' | 'friedDry' | 'coAlarm' | 'leakTested' | 'extensionCord' | 'protectedSockets' | 'carrySteps' | 'flaskTableSteady' | 'adultsPour' | 'tongs' | 'openFoodThrown' | 'cutForChildren' | 'handwash' | 'ill' | 'printInjectors' | 'eggsChilled' | 'platesChanged' | 'pickleTested';
const notKnown = 'notKnown';

/** A question answered yes, no, or not yet. */
function YesNo({ of }: { readonly of: YesNoKey }) {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  const known = event.precautions?.[of];
  return (
    <Choice label={t(`view.precautions.${of}`)} value={known === undefined ? notKnown : known ? 'yes' : 'no'}
      options={[{ value: notKnown, text: t('view.precautions.notKnown') }, { value: 'yes', text: t('view.precautions.yes') }, { value: 'no', text: t('view.precautions.no') }]}
      onCommit={(v) => edit(setPrecautions(event, { [of]: v === notKnown ? undefined : v === 'yes' }))} />
  );
}
const choices = {
  extinguisher: ['none', 'wetChemical', 'powder', 'foam', 'carbonDioxide', 'water'], outdoorPlace: ['openGround', 'deck', 'underRoof', 'garage'], air: ['none', 'window', 'hood'],
  occasion: ['private', 'regular', 'paid', 'public'], venue: ['home', 'hall', 'park'], caterer: ['none', 'instructed', 'uninstructed'], reheatIn: ['pot', 'oven', 'microwave'],
} as const;

/** One of a few, or not known yet. */
function OneOf({ of }: { readonly of: keyof typeof choices }) {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  return (
    <Choice<string> label={t(`view.precautions.${of}`)} value={event.precautions?.[of] ?? notKnown}
      options={[{ value: notKnown, text: t('view.precautions.notKnown') }, ...choices[of].map((value) => ({ value, text: t.loose(`view.precautions.${of}.${value}`) }))]}
      onCommit={(v) => edit(setPrecautions(event, { [of]: v === notKnown ? undefined : v }))} />
  );
}

const foodKeys = ['eggsChilled', 'cookedC', 'coolTrays', 'coolTrayLongCm', 'coolTrayWideCm', 'reheatIn', 'platesChanged', 'pickleTested', 'picklePh'] as const;
type FoodKey = (typeof foodKeys)[number];
const foodNumbers = {
  cookedC: { unit: '°C', min: 0, max: 110, decimals: 0 }, coolTrays: { unit: '', min: 0, max: 50, decimals: 0 }, coolTrayLongCm: { unit: 'cm', min: 5, max: 100, decimals: 1 }, coolTrayWideCm: { unit: 'cm', min: 5, max: 100, decimals: 1 },
  picklePh: { unit: '', min: 1, max: 14, decimals: 1 },
} as const;

/** One question about how food is cooked, cooled, kept and set out. */
function FoodField({ of }: { readonly of: FoodKey }) {
  const t = useSpeaker();
  const { event, edit } = useDocument();
  if (of === 'reheatIn') return <OneOf of={of} />;
  if (of === 'eggsChilled' || of === 'platesChanged' || of === 'pickleTested') return <YesNo of={of} />;
  const { unit, min, max, decimals } = foodNumbers[of];
  const common = { label: t(`view.precautions.${of}`), value: event.precautions?.[of] ?? null, min, max, decimals, onClear: () => edit(setPrecautions(event, { [of]: undefined })), onCommit: (value: number) => edit(setPrecautions(event, { [of]: value })) };
  if (unit === '°C') return <MeasureField {...common} unit={unit} />;
  return unit === '' ? <NumberField {...common} /> : <NumberField {...common} unit={unit} />;
}

/** What only the household knows of place and day; the rules of safety and the emergency card read it. Nothing has to be answered. */
export function Precautions() {
  const t = useSpeaker();
  const { event, plan, edit } = useDocument();
  const p = event.precautions ?? {};
  const set = (patch: Parameters<typeof setPrecautions>[1]) => edit(setPrecautions(event, patch));
  const text = (of: 'address' | 'emergencyNumber' | 'contact' | 'injectors') => (
    <TextField label={t(`view.precautions.${of}`)} value={p[of] ?? ''} optional longest={of === 'emergencyNumber' ? 60 : 200} onCommit={(v) => set({ [of]: v.trim() === '' ? undefined : v.trim() })} />
  );
  // Whether a dish has to be cooled, kept or set out differs from event to event: only what a rule asks for is asked, and what is answered.
  const asked = new Set(plan.safety.notChecked.flatMap((n) => (n.needs.id === 'safety.needs.fact' ? [n.needs.params.field] : [])));
  const cooled = asked.has('coolTrays') || p.coolTrays !== undefined;
  const wanted = (of: FoodKey): boolean => asked.has(of) || p[of] !== undefined || ((of === 'coolTrayLongCm' || of === 'coolTrayWideCm') && cooled && p.coolTrays !== 0) || (of === 'picklePh' && (asked.has('pickleTested') || p.pickleTested !== undefined));
  const food = foodKeys.filter(wanted).map((of) => <FoodField key={of} of={of} />);
  const group = (title: string, fields: ReactNode) => (
    <fieldset className={styles['group']}><legend className={styles['legend']}>{t.loose(title)}</legend><div className={styles['fields']}>{fields}</div></fieldset>
  );
  return (
    <ViewSection title={t('view.precautions')} lead={t('view.precautions.lead')}>
      {group('view.precautions.fire', (
        <>
          <YesNo of="lidAtHand" /><OneOf of="extinguisher" /><YesNo of="thermometer" /><YesNo of="friedDry" /><YesNo of="childLine" />
          <NumberField label={t('view.precautions.flameCm')} unit="cm" value={p.flameCm ?? null} min={0} max={1000} onClear={() => set({ flameCm: undefined })} onCommit={(flameCm) => set({ flameCm })} />
          <NumberField label={t('view.precautions.oilSigns')} value={p.oilSigns ?? null} min={0} max={5} onClear={() => set({ oilSigns: undefined })} onCommit={(oilSigns) => set({ oilSigns })} />
          <OneOf of="outdoorPlace" />
          <MeasureField label={t('view.precautions.wallMetres')} unit="m" value={p.wallMetres ?? null} min={0} max={100} decimals={1} onClear={() => set({ wallMetres: undefined })} onCommit={(wallMetres) => set({ wallMetres })} />
        </>
      ))}
      {group('view.precautions.gas', (
        <>
          <YesNo of="coAlarm" /><OneOf of="air" /><YesNo of="leakTested" />
          <NumberField label={t('view.precautions.cylinderCm')} unit="cm" value={p.cylinderCm ?? null} min={0} max={2000} step={10} onClear={() => set({ cylinderCm: undefined })} onCommit={(cylinderCm) => set({ cylinderCm })} />
          <YesNo of="extensionCord" /><YesNo of="protectedSockets" />
        </>
      ))}
      {group('view.precautions.carry', (
        <>
          <MeasureField label={t('view.precautions.carryMetres')} unit="m" value={p.carryMetres ?? null} min={0} max={500} onClear={() => set({ carryMetres: undefined })} onCommit={(carryMetres) => set({ carryMetres })} />
          <YesNo of="carrySteps" />
          <NumberField label={t('view.precautions.lifters')} value={p.lifters ?? null} min={1} max={4} onClear={() => set({ lifters: undefined })} onCommit={(lifters) => set({ lifters })} />
          <NumberField label={t('view.precautions.flaskTableCm')} unit="cm" value={p.flaskTableCm ?? null} min={0} max={200} step={5} onClear={() => set({ flaskTableCm: undefined })} onCommit={(flaskTableCm) => set({ flaskTableCm })} />
          <YesNo of="flaskTableSteady" /><YesNo of="adultsPour" />
        </>
      ))}
      {group('view.precautions.hands', <><YesNo of="handwash" /><YesNo of="tongs" /><YesNo of="ill" /><YesNo of="openFoodThrown" /><YesNo of="cutForChildren" /></>)}
      {food.length > 0 && group('view.precautions.food', food)}
      {group('view.precautions.event', <><OneOf of="occasion" /><OneOf of="venue" /><OneOf of="caterer" /></>)}
      {group('view.precautions.emergency', <>{text('address')}{text('emergencyNumber')}{text('contact')}{text('injectors')}<YesNo of="printInjectors" /></>)}
    </ViewSection>
  );
}
