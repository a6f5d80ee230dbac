import { Component, type ReactNode } from 'react';
import { Problem } from '../parts/problem';

interface ViewFaultProps {
  readonly title: string;
  /** When this is another one, the view is tried again: an undo may have mended it. */
  readonly of: unknown;
  readonly children: ReactNode;
}

interface Drawn {
  readonly fault: string | null;
  readonly of: unknown;
}

/** A view that fails to draw says so; the others go on working. */
export class ViewFault extends Component<ViewFaultProps, Drawn> {
  override state: Drawn = { fault: null, of: this.props.of };

  static getDerivedStateFromProps({ of }: ViewFaultProps, drawn: Drawn): Drawn | null {
    return of === drawn.of ? null : { fault: null, of };
  }

  static getDerivedStateFromError(fault: unknown): { fault: string } {
    return { fault: fault instanceof Error ? fault.message : String(fault) };
  }

  override render(): ReactNode {
    return this.state.fault === null ? this.props.children : <Problem message={this.props.title} mend={this.state.fault} />;
  }
}
