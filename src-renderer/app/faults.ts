import { useEffect, useId, useSyncExternalStore } from 'react';

// Fields that hold an entry the event could not take. While there is one, figures are marked "not updated".
const standing = new Set<string>();
const listeners = new Set<() => void>();
const tell = (): void => { for (const listener of listeners) listener(); };

/** Marks that the field of this component holds a wrong entry. Cleared when it is mended or goes away. */
export function useFault(wrong: boolean): void {
  const id = useId();
  useEffect(() => {
    if (!wrong) return undefined;
    standing.add(id);
    tell();
    return () => {
      standing.delete(id);
      tell();
    };
  }, [id, wrong]);
}

/** How many fields hold a wrong entry. */
export const useFaultCount = (): number =>
  useSyncExternalStore((listener) => { listeners.add(listener); return () => listeners.delete(listener); }, () => standing.size);
