import { useSpeaker } from '../../../app/speak';
import { Button } from '../../../parts/button';
import styles from './recipes.module.css';

interface RowButtonsProps<T> {
  readonly list: readonly T[];
  readonly at: number;
  readonly name: string;
  readonly isLast?: boolean;
  readonly put: (list: T[]) => void;
  readonly go: (at: number, by: -1 | 1) => void;
  /** Takes the row out where that is more than leaving it away. */
  readonly remove?: () => void;
}

/** Up, down and out for one row of a list. */
export function RowButtons<T>({ list, at, name, isLast = false, put, go, remove = () => put(list.filter((_, i) => i !== at)) }: RowButtonsProps<T>) {
  const t = useSpeaker();
  return (
    <div className={styles['rowButtons']}>
      <Button kind="link" isDisabled={at === 0} label={t('view.recipes.upOf', { name })} onPress={() => go(at, -1)}>{t('view.recipes.up')}</Button>
      <Button kind="link" isDisabled={at === list.length - 1} label={t('view.recipes.downOf', { name })} onPress={() => go(at, 1)}>{t('view.recipes.down')}</Button>
      <Button kind="link" isDisabled={isLast} label={t('view.recipes.outOf', { name })} onPress={remove}>{t('view.recipes.out')}</Button>
    </div>
  );
}
