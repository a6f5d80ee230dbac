import { useId, useState } from 'react';
import { useSpeaker } from '../../../app/speak';
import { Button } from '../../../parts/button';
import fields from '../../../parts/fields.module.css';
import styles from './recipes.module.css';

/** One more ingredient, typed as a line of a book; Enter adds it. */
export function AddLine({ onAdd }: { readonly onAdd: (text: string) => void }) {
  const t = useSpeaker();
  const id = useId();
  const [text, setText] = useState('');
  const add = (): void => {
    if (text.trim() === '') return;
    onAdd(text.trim());
    setText('');
  };
  return (
    <form className={styles['addLine']} onSubmit={(e) => { e.preventDefault(); add(); }}>
      <div className={fields['field']}>
        <label htmlFor={id} className={fields['label']}>{t('view.recipes.addLine')}, {t('view.recipes.addLineHint')}</label>
        <span className={fields['box']}><input id={id} className={fields['input']} value={text} autoComplete="off" maxLength={400} onChange={(e) => setText(e.currentTarget.value)} /></span>
      </div>
      <Button onPress={add}>{t('view.recipes.addLineButton')}</Button>
    </form>
  );
}
