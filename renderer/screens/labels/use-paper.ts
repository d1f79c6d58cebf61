/** Asks for a paper and hands it over; busy until it is made. */
import { useState } from 'react'
import type { Request } from '../../../shared/channels.ts'
import { useBridge } from '../../app/bridge-context.tsx'
import { call } from '../../app/calls.ts'
import { handPaper } from '../../parts/paper/hand-paper.ts'

type PaperChannel = 'labels.paper' | 'labels.testPaper'

export function usePaper<C extends PaperChannel>(channel: C) {
  const bridge = useBridge()
  const [isBusy, setBusy] = useState(false)
  const [isDone, setDone] = useState(false)
  const [error, setError] = useState<Error | null>(null)

  async function make(request: Request<C>) {
    setBusy(true)
    setDone(false)
    setError(null)
    try {
      handPaper(await call<PaperChannel>(bridge, channel, request))
      setDone(true)
    } catch (failure) {
      setError(failure instanceof Error ? failure : new Error(String(failure)))
    } finally {
      setBusy(false)
    }
  }

  return { make, isBusy, isDone, error }
}
