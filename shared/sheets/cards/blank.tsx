import type { ReactElement } from 'react';

/** A line to write on, with the unit behind it; with `text`, what is known stands on the line. */
export function Blank({ unit = '', text = '' }: { readonly unit?: string; readonly text?: string }): ReactElement {
  return <span className="blank"><span className="dotted">{text}</span>{unit !== '' && <span className="unit">{unit}</span>}</span>;
}
