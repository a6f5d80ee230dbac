import { useEffect, useId, useRef, useState } from 'react';
import { useSpeaker } from '../../../app/speak';
import { Button } from '../../../parts/button';
import { ViewPage } from '../../../parts/view-page';
import type { GoTo } from './page';
import { pastedRecipes, type PastedRecipes } from './text-recipe';
import styles from './recipes.module.css';

/** Largest file read, in bytes: what the host takes too. */
const mostBytes = 8_000_000;

/** A text to paste, or a saved page to open. A pasted text is read at once. */
export function PastePage({ go }: { readonly go: GoTo }) {
  const t = useSpeaker();
  const id = useId();
  const box = useRef<HTMLTextAreaElement>(null);
  const [text, setText] = useState('');
  const [found, setFound] = useState<PastedRecipes | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  useEffect(() => { box.current?.focus(); }, []);
  const read = (given: string): void => {
    const next = pastedRecipes(given);
    const [only] = next.recipes;
    if (only !== undefined && next.recipes.length === 1 && next.problems.length === 0) go({ kind: 'settle', imported: only });
    else setFound(next);
  };
  const open = async (file: File): Promise<void> => {
    setFault(null);
    if (file.size > mostBytes) { setFault(t('host.too-large', { path: file.name, megabytes: mostBytes / 1_000_000 })); return; }
    try {
      const whole = await file.text();
      setText(whole.slice(0, 200_000));
      read(whole);
    } catch {
      setFault(`${t('host.no-file', { path: file.name })} ${t('host.no-file.mend')}`);
    }
  };
  return (
    <ViewPage title={t('view.recipes.paste')} lead={t('view.recipes.pasteLead')} actions={<Button onPress={() => go(null)}>{t('view.recipes.back')}</Button>}>
      <label htmlFor={id} className={styles['note']}>{t('view.recipes.pasteText')}</label>
      <textarea id={id} ref={box} className={styles['paste']} value={text} spellCheck={false} rows={12}
        onChange={(e) => {
          const { value } = e.currentTarget;
          setText(value);
          setFound(null);
          if (e.nativeEvent instanceof InputEvent && e.nativeEvent.inputType === 'insertFromPaste') read(value);
        }} />
      <div className={styles['finish']}>
        <Button kind="primary" onPress={() => read(text)}>{t('view.recipes.pasteRead')}</Button>
        <label className={styles['file']}>
          {t('view.recipes.pasteFile')}
          <input type="file" accept=".html,.htm,.json,.jsonld,.txt" onChange={(e) => {
            const file = e.currentTarget.files?.[0];
            // The same file may be chosen again once it is mended.
            e.currentTarget.value = '';
            if (file !== undefined) void open(file);
          }} />
        </label>
      </div>
      {fault !== null && <p className={styles['problem']} role="alert">{fault}</p>}
      {found?.problems.map((problem) => <p key={problem.id} className={styles['problem']} role="alert">{t.message(problem)}</p>)}
      {found !== null && found.recipes.length > 0 && (
        <section className={styles['which']}>
          <h3>{t('view.recipes.pasteWhich')}</h3>
          <ul>{found.recipes.map((recipe, at) => <li key={`${at} ${recipe.name}`}><Button kind="link" onPress={() => go({ kind: 'settle', imported: recipe })}>{recipe.name || t('view.recipes.new')}</Button></li>)}</ul>
        </section>
      )}
    </ViewPage>
  );
}
