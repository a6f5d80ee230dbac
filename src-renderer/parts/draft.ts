import { useState } from 'react';
import type { Message } from '../../shared/words';
import { useSpeaker } from '../app/speak';

/** What came of reading a typed entry: a value to hand on, or what is wrong with it. */
export type Reading<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly problem: string };

/**
 * Text being typed into a field. It is handed on when the cook leaves the field or presses Enter; a wrong entry stays as typed, with its reason.
 * Escape gives back the standing value.
 */
export function useDraft<T>(standing: string, read: (text: string) => Reading<T>, commit: (value: T) => Message | null) {
  const t = useSpeaker();
  const [draft, setDraft] = useState<string | null>(null);
  const [error, setError] = useState<string | null>(null);
  const take = (text: string): void => {
    const reading = read(text);
    if (!reading.ok) {
      setDraft(text);
      setError(reading.problem);
      return;
    }
    const problem = commit(reading.value);
    setDraft(problem === null ? null : text);
    setError(problem === null ? null : t.message(problem));
  };
  const drop = (): void => {
    setDraft(null);
    setError(null);
  };
  return {
    error,
    take,
    drop,
    input: {
      value: draft ?? standing,
      'data-draft': draft === null ? 'no' : 'yes',
      onChange: (e: { currentTarget: { value: string } }) => setDraft(e.currentTarget.value),
      onBlur: () => { if (draft !== null) { if (draft === standing) drop(); else take(draft); } },
      onKeyDown: (e: { key: string; currentTarget: { value: string } }) => {
        if (e.key === 'Enter' && draft !== null) take(draft);
        if (e.key === 'Escape') drop();
      },
    },
  };
}
