import type { ReactNode } from 'react';
import { Dialog, Heading } from 'react-aria-components/Dialog';
import { Modal, ModalOverlay } from 'react-aria-components/Modal';
import { Button } from '../actions/button.js';
import './overlay.css';

interface SheetDialogProps {
  readonly title: string;
  readonly open: boolean;
  readonly onClose: () => void;
  /** 'sheet' comes from the side and holds a form; 'dialog' stands in the middle. */
  readonly shape?: 'dialog' | 'sheet';
  /** An act must be answered: a press outside or Esc does not close it. */
  readonly mustAnswer?: boolean;
  /** Buttons at the foot. The first field should have autoFocus. */
  readonly actions?: ReactNode;
  readonly children: ReactNode;
}

/** Something to be done before the page goes on. Focus goes in, and back to where it was. */
export function SheetDialog({
  title,
  open,
  onClose,
  shape = 'dialog',
  mustAnswer = false,
  actions,
  children,
}: SheetDialogProps) {
  return (
    <ModalOverlay
      className={`overlay overlay-${shape}`}
      isOpen={open}
      onOpenChange={(next) => !next && onClose()}
      isDismissable={!mustAnswer}
      isKeyboardDismissDisabled={mustAnswer}
    >
      <Modal className={`overlay-box overlay-box-${shape}`}>
        <Dialog className="overlay-inner" {...(mustAnswer ? { role: 'alertdialog' } : {})}>
          <div className="overlay-head">
            <Heading slot="title">{title}</Heading>
            {!mustAnswer && (
              <Button kind="quiet" onClick={onClose}>
                Close
              </Button>
            )}
          </div>
          <div className="overlay-body stack">{children}</div>
          {actions !== undefined && <div className="overlay-actions row">{actions}</div>}
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
