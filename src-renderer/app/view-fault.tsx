import { Component, type ReactNode } from 'react';
import { Problem } from '../parts/problem';

interface ViewFaultProps {
  readonly title: string;
  readonly children: ReactNode;
}

/** A view that fails to draw says so; the others go on working. */
export class ViewFault extends Component<ViewFaultProps, { readonly fault: string | null }> {
  override state: { readonly fault: string | null } = { fault: null };

  static getDerivedStateFromError(fault: unknown): { fault: string } {
    return { fault: fault instanceof Error ? fault.message : String(fault) };
  }

  override render(): ReactNode {
    return this.state.fault === null ? this.props.children : <Problem message={this.props.title} mend={this.state.fault} />;
  }
}
