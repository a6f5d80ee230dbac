import { addWave, countHelpersIn, freshId, removeWave, setDay, setHeadcount, setHigherRisk, setTimes, setTitle } from '../../../shared/edit';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Button } from '../../parts/button';
import { Choice } from '../../parts/choice';
import { EmptyState } from '../../parts/empty-state';
import { FigureButton } from '../../parts/figure-button';
import { TextField } from '../../parts/text-field';
import { AddThing, Thing, Things } from '../../parts/thing';
import { TimeField } from '../../parts/time-field';
import { Fact, Facts, ViewPage, ViewSection } from '../../parts/view-page';
import { Allergies } from './allergies';
import { Diets } from './diets';
import { PresencePicture } from './presence-picture';
import { StayOn } from './stay-on';
import { WaveFieldSet } from './wave-field-set';
import { WhatNext } from './what-next';
import styles from './guests.module.css';

/** Who comes, when, for how long, and what they must not have. */
export function Guests() {
  const t = useSpeaker();
  const { event, plan, edit } = useDocument();
  const { guests } = plan;
  const { headcount, waves } = event.guests;
  const risk = event.guests.higherRisk === null ? 'unknown' : event.guests.higherRisk ? 'yes' : 'no';
  return (
    <ViewPage title={t('view.guests')} lead={t('view.guests.lead', { adults: guests.adults.value, children: guests.children.value, most: Math.round(guests.peak.value), at: guests.peakAt })}>
      <WhatNext />
      <Facts>
        <Fact name={t('board.adults')}><FigureButton figure={guests.adults} title={t('board.adults')}>{t.formats.number(guests.adults.value)}</FigureButton></Fact>
        <Fact name={t('board.children')}><FigureButton figure={guests.children} title={t('board.children')}>{t.formats.number(guests.children.value)}</FigureButton></Fact>
        <Fact name={t('view.guests.planned')} note={t('view.guests.cover', { n: event.preferences.cover * 10 })}><FigureButton figure={guests.planned} title={t('view.guests.planned')}>{t.formats.number(guests.planned.value, 1)}</FigureButton></Fact>
        <Fact name={t('board.mostAtOnce')}><FigureButton figure={guests.peak} title={t('board.mostAtOnce')}>{t.formats.number(Math.round(guests.peak.value))}</FigureButton></Fact>
      </Facts>
      <ViewSection title={t('view.guests.event')}>
        <div className={styles['fields']}>
          <TextField label={t('view.guests.title')} value={event.title} onCommit={(title) => edit(setTitle(event, title))} />
          <TextField label={t('view.guests.day')} value={event.day} onCommit={(day) => edit(setDay(event, day))} />
          <TimeField label={t('view.guests.opens')} value={event.opensAt} onCommit={(at) => edit(setTimes(event, at, event.closesAt))} />
          <TimeField label={t('view.guests.closes')} value={event.closesAt} onCommit={(at) => edit(setTimes(event, event.opensAt, at))} />
        </div>
      </ViewSection>
      {waves.length > 0 && <ViewSection title={t('view.guests.through')}><PresencePicture /><StayOn /></ViewSection>}
      <ViewSection title={t('view.guests.waves')}>
        {(headcount.adults !== null || headcount.children !== null) && (
          <p className={styles['note']}>{t('view.guests.overridden', headcount)} <Button kind="link" onPress={() => edit(setHeadcount(event, null, null))}>{t('view.guests.asWaves')}</Button></p>
        )}
        {waves.length === 0 && <EmptyState title={t('view.guests.noWaves')}>{t('view.guests.noWavesText')}</EmptyState>}
        <Things>
          {guests.waves.map((wave) => {
            const entry = waves.find((w) => w.id === wave.id);
            return entry === undefined ? null : (
              <Thing key={wave.id} name={wave.name} removeText={t('view.guests.removeWave')} remove={() => removeWave(event, wave.id)} fields={<WaveFieldSet wave={wave} entry={entry} />} />
            );
          })}
        </Things>
        <AddThing add={() => {
          const last = waves.at(-1);
          const from = Math.min(event.closesAt - 60, last === undefined ? event.opensAt : last.to + 60);
          return addWave(event, { id: freshId(waves, 'wave'), name: t('view.guests.newWave', { n: waves.length + 1 }), from, to: from + 30, counts: {}, stay: last?.stay ?? { shortest: 60, usual: 90, longest: 180 } });
        }}>{t('view.guests.addWave')}</AddThing>
        {event.people.length > 0 && !waves.some((w) => w.id.startsWith('helpers')) && (
          <Button kind="link" onPress={() => edit(countHelpersIn(event, t('view.guests.helpersWave')))}>{t('view.guests.countHelpers', { n: event.people.length })}</Button>
        )}
      </ViewSection>
      <Diets />
      <Allergies />
      <ViewSection title={t('view.guests.risk')} lead={t('view.guests.riskQuestion')}>
        <Choice label={t('view.guests.riskAnswer')} bare value={risk} onCommit={(next) => edit(setHigherRisk(event, next === 'unknown' ? null : next === 'yes'))}
          options={[{ value: 'unknown', text: t('view.guests.riskUnknown') }, { value: 'yes', text: t('view.guests.yes') }, { value: 'no', text: t('view.guests.no') }]} />
      </ViewSection>
    </ViewPage>
  );
}
