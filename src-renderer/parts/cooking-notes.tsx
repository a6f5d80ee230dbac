import type { CookingNote } from '../../shared/cooking';
import { useSpeaker } from '../app/speak';
import styles from './cooking-notes.module.css';
import { FigureButton } from './figure-button';
import { Mark } from './mark';

/** What is to know about pots, cookings and fresh bowls of the meal, each with its measured value, its limit and the ways out. */
export function CookingNotes({ notes }: { readonly notes: readonly CookingNote[] }) {
  const t = useSpeaker();
  if (notes.length === 0) return null;
  return (
    <ul className={styles['notes']}>
      {notes.map((note, i) => {
        const text = t.message(note.message);
        return (
          <li key={i}>
            <p>{note.level === 'watch' && <><Mark kind="watch" /> <span className="unseen">{t('board.watch')}: </span></>}{text}</p>
            <p className={styles['facts']}>{t('cooking.measured')} <FigureButton figure={note.measured} title={t('cooking.measured')} />, {t('cooking.limit')} <FigureButton figure={note.limit} title={t('cooking.limit')} /></p>
            {note.ways.length > 0 && <ul>{note.ways.map((way, n) => <li key={n}>{t.message(way)}</li>)}</ul>}
          </li>
        );
      })}
    </ul>
  );
}
