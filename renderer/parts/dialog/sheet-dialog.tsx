/** A sheet over the page for one thing to be done; Escape and a press outside leave it. */
import type { ReactNode } from 'react'
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components'
import { classes } from '../classes.ts'
import styles from './sheet-dialog.module.css'

export interface SheetDialogProps {
  title: string
  isOpen: boolean
  onClose: () => void
  /** `wide` for forms in two columns. */
  size?: 'usual' | 'wide'
  children: ReactNode
}

export function SheetDialog({
  title,
  isOpen,
  onClose,
  size = 'usual',
  children,
}: SheetDialogProps) {
  return (
    <ModalOverlay
      className={classes(styles.overlay)}
      isOpen={isOpen}
      onOpenChange={(isNowOpen) => {
        if (!isNowOpen) onClose()
      }}
      isDismissable
    >
      <Modal className={classes(styles.sheet, size === 'wide' && styles.wide)}>
        <Dialog className={classes(styles.dialog)}>
          <Heading slot="title" level={2}>
            {title}
          </Heading>
          {children}
        </Dialog>
      </Modal>
    </ModalOverlay>
  )
}

/** The row of buttons at a form's end: what it is for comes first. */
export const DialogActions = ({ children }: { children: ReactNode }) => (
  <div className={styles.actions}>{children}</div>
)
