import type { ComponentType } from 'react';
import type { PlainWordId } from '../../shared/words';

/** The questions of the left rule, in the order a cook asks them. */
export const viewGroups = ['now', 'who', 'howMuch', 'when', 'paper'] as const;
/** One question of the left rule. */
export type ViewGroup = (typeof viewGroups)[number];

/** A view: how it is named, where it stands, what draws it. The component takes no props; it reads `useDocument()`. */
export interface View {
  readonly id: string;
  /** Word id of its name. */
  readonly titleWord: PlainWordId;
  readonly group: ViewGroup;
  readonly component: ComponentType;
}
