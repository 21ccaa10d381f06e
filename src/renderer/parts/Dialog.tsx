import type { ReactNode } from 'react';
import { Dialog as AriaDialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { Button } from './Button.tsx';
import styles from './Dialog.module.css';

export interface DialogProps {
  readonly title: string;
  readonly isOpen: boolean;
  readonly onClose: () => void;
  readonly children: ReactNode;
  /** Acts at the foot; without any there is one to close. */
  readonly foot?: ReactNode;
  readonly width?: 'narrow' | 'wide' | 'broad';
}

/** Something that must be read or chosen before going on. Escape and a press beside it close it. */
export function Dialog({ title, isOpen, onClose, children, foot, width = 'narrow' }: DialogProps) {
  return (
    <ModalOverlay
      className={styles.veil ?? ''}
      isOpen={isOpen}
      onOpenChange={(open) => (open ? undefined : onClose())}
      isDismissable
    >
      <Modal className={styles.modal ?? ''} data-width={width}>
        <AriaDialog className={styles.dialog ?? ''}>
          <Heading slot="title" className={styles.title ?? ''}>
            {title}
          </Heading>
          <div className={styles.body}>{children}</div>
          <div className={styles.foot}>{foot ?? <Button onPress={onClose}>Close</Button>}</div>
        </AriaDialog>
      </Modal>
    </ModalOverlay>
  );
}
