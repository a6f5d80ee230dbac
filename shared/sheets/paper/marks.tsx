import type { ReactElement } from 'react';

/** A box to tick with a thick pen: 8 mm, or 5 mm beside a bowl or fill row. Drawn as vector lines so that it always prints, a little inside its edge so that no line is cut. */
export function TickBox({ small = false }: { readonly small?: boolean }): ReactElement {
  return (
    <svg className={small ? 'tick tick-small' : 'tick'} viewBox="0 0 8 8" aria-hidden="true">
      <rect x="0.35" y="0.35" width="7.3" height="7.3" />
    </svg>
  );
}

/** Diagonal hatch that marks a row of another kind; lines, not a fill, because backgrounds may be left out in print. */
export function Hatch(): ReactElement {
  const lines = Array.from({ length: 26 }, (_, i) => `M${i * 2} 8 l8 -8`).join(' ');
  return (
    <svg className="hatch" viewBox="8 0 44 8" preserveAspectRatio="xMaxYMid slice" aria-hidden="true">
      <path d={lines} />
    </svg>
  );
}
