/** The act whose dialog is open. */
import { useState } from 'react'
import type { Act } from './act.ts'

export interface Acts {
  readonly open: Act | undefined
  begin: (act: Act) => void
  /** Recorded, or given up. */
  leave: () => void
}

export function useActs(): Acts {
  const [open, setOpen] = useState<Act>()
  return { open, begin: setOpen, leave: () => setOpen(undefined) }
}
