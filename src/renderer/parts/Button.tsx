import { Button as AriaButton, type ButtonProps as AriaProps, composeRenderProps } from 'react-aria-components';
import styles from './Button.module.css';

export interface ButtonProps extends AriaProps {
  /** 'strong' for the one act that matters most here, 'plain' for the others, 'bare' within a line, 'stops' to remove. */
  readonly tone?: 'strong' | 'plain' | 'bare' | 'stops';
  readonly small?: boolean;
}

/** A button of the house: words, square corners, no shadow. */
export function Button({ tone = 'plain', small = false, className, ...rest }: ButtonProps) {
  const own = `${styles.button} ${styles[tone]} ${small ? styles.small : ''}`;
  return <AriaButton {...rest} className={composeRenderProps(className, (given) => `${own} ${given ?? ''}`)} />;
}
