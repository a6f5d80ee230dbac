import { addBurner, addDispenser, addPan, addPerson, addPot, addStation, freshId } from '../../../shared/edit';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { CookingNotes } from '../../parts/cooking-notes';
import { Measuring } from '../../parts/measuring';
import { AddThing, Things } from '../../parts/thing';
import { ViewPage, ViewSection } from '../../parts/view-page';
import { BurnerThing } from './burners';
import { Circuits } from './circuits';
import { Cylinders } from './cylinders';
import { DispenserThing, PotThing } from './vessels';
import { PanThing } from './pans';
import { PersonThing } from './people';
import { Place } from './place';
import { Precautions } from './precautions';
import { StationThing } from './stations';

/** What there is to cook on and with, and who helps. */
export function Kitchen() {
  const t = useSpeaker();
  const { event, plan } = useDocument();
  const { pans, burners, pots, dispensers, stations } = event.kitchen;
  const { people } = event;
  const none = <p>{t('view.kitchen.none')}</p>;
  return (
    <ViewPage title={t('view.kitchen')} lead={t('view.kitchen.lead')}>
      <ViewSection title={t('view.kitchen.pans')} lane="frying">
        {pans.length === 0 && none}
        <Things>{pans.map((pan) => <PanThing key={pan.id} pan={pan} />)}</Things>
        <AddThing add={() => {
          const burner = burners[0];
          if (burner === undefined) return { why: t('view.kitchen.burnerFirst') };
          return addPan(event, { id: freshId(pans, 'pan'), name: t('view.kitchen.newPan', { n: pans.length + 1 }), shape: 'straight', rimMm: 300, depthMm: 140, oilLitres: 2.5, burner: burner.id });
        }}>{t('view.kitchen.addPan')}</AddThing>
      </ViewSection>
      <ViewSection title={t('view.kitchen.stations')} lane="frying">
        {stations.length === 0 && none}
        <Things>{stations.map((station) => <StationThing key={station.id} station={station} />)}</Things>
        <AddThing add={() => {
          const pan = pans.find((p) => !stations.some((s) => s.pans.includes(p.id))) ?? pans[0];
          if (pan === undefined) return { why: t('view.kitchen.panFirst') };
          return addStation(event, { id: freshId(stations, 'station'), name: t('view.kitchen.newStation', { n: stations.length + 1 }), pans: [pan.id] });
        }}>{t('view.kitchen.addStation')}</AddThing>
      </ViewSection>
      <ViewSection title={t('view.kitchen.burners')}>
        {burners.length === 0 && none}
        <Things>{burners.map((burner) => <BurnerThing key={burner.id} burner={burner} />)}</Things>
        <AddThing add={() => addBurner(event, { id: freshId(burners, 'burner'), name: t('view.kitchen.newBurner', { n: burners.length + 1 }), kind: 'gas', ratedW: 2500 })}>{t('view.kitchen.addBurner')}</AddThing>
      </ViewSection>
      <ViewSection title={t('view.kitchen.pots')}>
        {pots.length === 0 && none}
        <CookingNotes notes={plan.cooking.notes.filter((n) => n.limit.unit === 'L' || n.message.id === 'cooking.say.potTime')} />
        <Things>{pots.map((pot) => <PotThing key={pot.id} pot={pot} />)}</Things>
        <AddThing add={() => addPot(event, { id: freshId(pots, 'pot'), name: t('view.kitchen.newPot', { n: pots.length + 1 }), litres: 8 })}>{t('view.kitchen.addPot')}</AddThing>
      </ViewSection>
      <ViewSection title={t('view.kitchen.dispensers')} lane="drinks">
        {dispensers.length === 0 && none}
        <Things>{dispensers.map((dispenser) => <DispenserThing key={dispenser.id} dispenser={dispenser} />)}</Things>
        <AddThing add={() => addDispenser(event, { id: freshId(dispensers, 'flask'), name: t('view.kitchen.newDispenser', { n: dispensers.length + 1 }), litres: 5, insulation: 'foam' })}>{t('view.kitchen.addDispenser')}</AddThing>
      </ViewSection>
      <ViewSection title={t('view.kitchen.people')} lane="hands">
        {people.length === 0 && none}
        <Things>{people.map((person) => <PersonThing key={person.id} person={person} />)}</Things>
        <AddThing add={() => addPerson(event, { id: freshId(people, 'helper'), name: t('view.kitchen.newPerson', { n: people.length + 1 }), roles: ['runner'], from: event.opensAt - 60, to: event.closesAt + 60 })}>{t('view.kitchen.addPerson')}</AddThing>
      </ViewSection>
      <Circuits />
      <Cylinders />
      <Measuring />
      <Place />
      <Precautions />
    </ViewPage>
  );
}
