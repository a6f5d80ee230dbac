import { changeDish } from '../../../shared/edit';
import { offerSaves, type FryOffer } from '../../../shared/frying';
import type { Names } from '../../../shared/sheets';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Button } from '../../parts/button';
import { FigureButton } from '../../parts/figure-button';
import { ViewSection } from '../../parts/view-page';
import { useOffers } from './use-offers';
import styles from './frying.module.css';

/** How long pieces wait, and other plans in which they wait less: each with what it saves, chosen by one press and undone like any edit. */
export function Offers({ names }: { readonly names: Names }) {
  const t = useSpeaker();
  const { event, plan, edit } = useDocument();
  const offers = useOffers(event);
  const choose = (dish: string, moreBatches: number | null) => edit(changeDish(event, dish, { fryFresh: moreBatches === null ? undefined : { moreBatches } }));
  return (
    <ViewSection title={t('view.frying.fresh.title')} lead={t('view.frying.fresh.lead')}>
      {plan.frying.waits.map((wait) => {
        const name = names.dish(wait.dish);
        const chosen = event.menu.dishes.find((d) => d.id === wait.dish)?.fryFresh;
        const mine = offers?.filter((o) => o.dish === wait.dish) ?? [];
        return (
          <div key={wait.dish} className={styles['waits']}>
            <h4>{name}</h4>
            <p>
              {t('view.frying.fresh.now')} <FigureButton figure={wait.perPiece} title={t('view.sheets.figureOf', { of: name, what: t('view.frying.fresh.each') })} />
              {', '}{t('view.frying.fresh.all')} <FigureButton figure={wait.minutes} title={t('view.sheets.figureOf', { of: name, what: t('view.frying.fresh.inAll') })} />
              {'. '}{t('view.frying.fresh.smallest', { pieces: wait.smallestBatch })}
            </p>
            {chosen !== undefined && (
              <p className={styles['offer']}><span>{t('view.frying.fresh.chosen', { more: chosen.moreBatches })}</span> <Button onPress={() => choose(wait.dish, null)}>{t('view.frying.fresh.back')}</Button></p>
            )}
            {mine.map((o) => <Offer key={o.more} offer={o} name={name} onChoose={() => choose(o.dish, o.more)} />)}
            {offers !== null && mine.length === 0 && <p className={styles['key']}>{t('view.frying.fresh.none')}</p>}
          </div>
        );
      })}
      <p className={styles['key']} role="status">{offers === null ? t('view.frying.fresh.looking') : ''}</p>
    </ViewSection>
  );
}

function Offer({ offer, name, onChoose }: { readonly offer: FryOffer; readonly name: string; readonly onChoose: () => unknown }) {
  const t = useSpeaker();
  const saved = offerSaves(offer);
  const gain = offer.batches - offer.batchesNow;
  return (
    <p className={styles['offer']}>
      <span>
        {gain > 0 ? t('view.frying.fresh.more', { batches: gain }) : t('view.frying.fresh.same')}{' '}
        <FigureButton figure={saved} title={t('view.sheets.figureOf', { of: name, what: t('view.frying.fresh.saves') })} />{' '}
        {t('view.frying.fresh.offerEnd', { smallest: offer.smallest, now: offer.smallestNow })}
      </span>{' '}
      <Button onPress={onChoose} label={gain > 0 ? t('view.frying.fresh.takeMore', { dish: name, batches: offer.batches }) : t('view.frying.fresh.takeSame', { dish: name })}>{t('view.frying.fresh.take')}</Button>
    </p>
  );
}
