const shapes = {
  /** Watch: a triangle. */
  watch: 'M6 1 L11.5 11 H0.5 Z',
  /** Stop: an octagon. */
  stop: 'M3.7 0.5 H8.3 L11.5 3.7 V8.3 L8.3 11.5 H3.7 L0.5 8.3 V3.7 Z',
  /** Opened, closed. */
  opened: 'M1 3.5 H11 L6 9.5 Z',
  closed: 'M3.5 1 V11 L9.5 6 Z',
} as const;

/** A small mark drawn beside its word; the text face has no such signs. Never alone: the word stands beside it. */
export function Mark({ kind }: { readonly kind: keyof typeof shapes | 'changed' }) {
  return (
    <svg width="12" height="12" viewBox="0 0 12 12" aria-hidden="true" focusable="false" data-mark={kind}>
      {kind === 'changed' ? <path d="M6 1.5 L11 10.5 H1 Z" fill="none" stroke="currentColor" strokeWidth="1.8" /> : <path d={shapes[kind]} fill="currentColor" />}
    </svg>
  );
}
