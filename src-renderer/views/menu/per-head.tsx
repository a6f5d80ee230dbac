import { perHead } from '../../../shared/menu';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { FigureButton } from '../../parts/figure-button';
import { Mark } from '../../parts/mark';
import { Fact, Facts } from '../../parts/view-page';
import styles from './menu.module.css';

/** The whole menu for one adult, and a word where that is far from what published tables give. */
export function PerHead() {
  const t = useSpeaker();
  const { event, plan } = useDocument();
  const { food, drinks, notices } = perHead(event, plan.menu);
  if (food === null && drinks === null) return null;
  return (
    <div className={styles['head']}>
      <Facts>
        {food !== null && <Fact name={t('menu.head.food')}><FigureButton figure={food} title={t('menu.head.food')} /></Fact>}
        {drinks !== null && <Fact name={t('menu.head.drinks')}><FigureButton figure={drinks} title={t('menu.head.drinks')} /></Fact>}
      </Facts>
      {notices.map((notice) => <p key={notice.id} className={styles['notice']} data-notice={notice.id}><Mark kind="watch" /> {t.message(notice)}</p>)}
    </div>
  );
}
