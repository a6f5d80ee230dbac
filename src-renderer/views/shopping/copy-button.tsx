import { useState } from 'react';
import { shoppingText } from '../../../shared/exchange';
import { useDocument } from '../../app/document';
import { useSpeaker } from '../../app/speak';
import { Button } from '../../parts/button';
import styles from './shopping.module.css';

/** Copies the list as plain text, to send to somebody; says so, or says that this computer does not let it. */
export function CopyButton({ who }: { readonly who: string | undefined }) {
  const t = useSpeaker();
  const { plan } = useDocument();
  const [said, setSaid] = useState('');
  const copy = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(shoppingText(plan, t.formats, who));
      setSaid(t('view.shopping.copied'));
    } catch {
      setSaid(t('view.shopping.notCopied'));
    }
  };
  return (
    <div>
      <Button onPress={() => void copy()}>{t('view.shopping.copy')}</Button>
      <output className={said === '' ? 'unseen' : styles['written']}>{said}</output>
    </div>
  );
}
