import type { ReactNode } from 'react';
import { Button as PressButton } from 'react-aria-components/Button';
import styles from './button.module.css';

interface ButtonProps {
  readonly children: ReactNode;
  readonly onPress: () => void;
  readonly kind?: 'plain' | 'primary' | 'link';
  readonly isDisabled?: boolean;
  readonly label?: string;
}

/** A button of the desk: plain, primary (one in a view at most) or set like a link. */
export function Button({ children, onPress, kind = 'plain', isDisabled = false, label }: ButtonProps) {
  return <PressButton className={`${styles['button']} ${styles[kind]}`} onPress={onPress} isDisabled={isDisabled} {...(label === undefined ? {} : { 'aria-label': label })}>{children}</PressButton>;
}
