import type { ReactNode } from 'react';
import { useState } from 'react';
import type { EditResult } from '../../shared/edit';
import { useDocument } from '../app/document';
import { useSpeaker } from '../app/speak';
import { Button } from './button';
import styles from './thing.module.css';

/** One thing of a list with its fields, its derived figures, and the way to take it out. */
export function Thing({ name, fields, figures, remove, removeText }: { readonly name: string; readonly fields: ReactNode; readonly figures?: ReactNode; readonly remove?: () => EditResult; readonly removeText: string }) {
  const t = useSpeaker();
  const { edit } = useDocument();
  const [problem, setProblem] = useState<string | null>(null);
  return (
    <li className={styles['thing']}>
      <fieldset className={styles['set']}>
        <legend className="unseen">{name}</legend>
        <div className={styles['fields']}>{fields}</div>
        {remove !== undefined && (
          <div className={styles['remove']}>
            <Button kind="link" label={`${removeText}: ${name}`} onPress={() => { const answer = edit(remove()); setProblem(answer === null ? null : t.message(answer)); }}>{removeText}</Button>
          </div>
        )}
      </fieldset>
      {problem !== null && <p className={styles['problem']} role="alert">{problem}</p>}
      {figures !== undefined && <div className={styles['figures']}>{figures}</div>}
    </li>
  );
}

/** A derived figure beside a thing: its name, then the number. */
export function Derived({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return <span className={styles['derived']}><span className={styles['derivedName']}>{name}</span> {children}</span>;
}

/** A list of things. */
export const Things = ({ children }: { readonly children: ReactNode }) => <ul className={styles['things']}>{children}</ul>;

/** Adds to a list; says what stands in the way. */
export function AddThing({ children, add }: { readonly children: ReactNode; readonly add: () => EditResult | { readonly why: string } }) {
  const t = useSpeaker();
  const { edit } = useDocument();
  const [problem, setProblem] = useState<string | null>(null);
  return (
    <p className={styles['add']}>
      <Button onPress={() => {
        const made = add();
        if ('why' in made) { setProblem(made.why); return; }
        const answer = edit(made);
        setProblem(answer === null ? null : t.message(answer));
      }}>{children}</Button>
      {problem !== null && <span className={styles['problem']} role="alert">{problem}</span>}
    </p>
  );
}
