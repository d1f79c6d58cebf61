/** One menu for all rows of the list: it opens at the button that was pressed. */
import { useRef, useLayoutEffect } from 'react'
import { Popover } from 'react-aria-components'
import { ActList } from '../acts/act-menu.tsx'
import type { ActLot, LotActKind } from '../acts/act.ts'
import type { ShelfLot } from '../../../../shared/schemas/shelf.ts'

export interface RowMenuOpen {
  readonly lot: ShelfLot['lot']
  readonly button: HTMLElement
}

interface RowMenuProps {
  /** Undefined keeps it closed. */
  open: RowMenuOpen | undefined
  onClose: () => void
  onAct: (kind: LotActKind, lot: ShelfLot['lot']) => void
}

const without: readonly LotActKind[] = ['drawBottle']

export function RowMenu({ open, onClose, onAct }: RowMenuProps) {
  const button = useRef<HTMLElement | null>(null)
  useLayoutEffect(() => {
    button.current = open?.button ?? null
  }, [open])
  if (!open) return null
  const { lot } = open
  return (
    <Popover
      placement="bottom end"
      triggerRef={button}
      isOpen
      onOpenChange={(isNowOpen) => {
        if (!isNowOpen) onClose()
      }}
    >
      <ActList
        lot={lot satisfies ActLot}
        without={without}
        onChoose={(kind) => {
          onClose()
          onAct(kind, lot)
        }}
      />
    </Popover>
  )
}
