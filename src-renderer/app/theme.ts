import { useEffect } from 'react';
import { useSession } from './session';

/** Puts the chosen theme on the page; `system` follows the computer, also while it changes. */
export function useTheme(): void {
  const chosen = useSession().settings?.theme ?? 'system';
  useEffect(() => {
    const dark = window.matchMedia('(prefers-color-scheme: dark)');
    const apply = (): void => {
      document.documentElement.dataset['theme'] = chosen === 'system' ? (dark.matches ? 'night' : 'day') : chosen;
    };
    apply();
    dark.addEventListener('change', apply);
    return () => dark.removeEventListener('change', apply);
  }, [chosen]);
}
