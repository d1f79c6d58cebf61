/**
 * A question asked of the curve. It may change with every movement of a slider: it is put at most
 * once a frame and one at a time, and the last answer stays in sight until the next is there.
 */
import { useEffect, useState } from 'react'
import type { BatchCurve, WhatIf } from '../../../../shared/schemas/steeping.ts'
import { useRead } from '../../../app/queries.ts'

export interface Asking {
  /** Undefined while nothing is asked. */
  readonly asked: WhatIf | undefined
  readonly ask: (whatIf: WhatIf | undefined) => void
  readonly answer: BatchCurve['whatIf']
  readonly error: Error | null
}

/** Answers to slider positions are many and large; one that is gone is asked again. */
const keptMs = 5000

export function useWhatIf(batchId: string): Asking {
  const [asked, ask] = useState<WhatIf>()
  const [put, setPut] = useState<WhatIf>()
  const [hasAnswer, setHasAnswer] = useState(false)
  const { data, error, isFetching, isPlaceholderData } = useRead(
    'batches.curve',
    { batchId, points: 200, ...(put && { whatIf: put }) },
    { isEnabled: put !== undefined, keepsLast: true, keptMs },
  )
  useEffect(() => {
    if (asked === put || isFetching) return undefined
    const frame = requestAnimationFrame(() => setPut(asked))
    return () => cancelAnimationFrame(frame)
  }, [asked, put, isFetching])
  // The answer to a question that was cleared must not stand in for the first of the next.
  if (asked === undefined && hasAnswer) setHasAnswer(false)
  const isAnswered = asked !== undefined && put !== undefined && data !== undefined
  if (isAnswered && !isPlaceholderData && !hasAnswer) setHasAnswer(true)
  return {
    asked,
    ask,
    answer: asked && hasAnswer ? data?.whatIf : undefined,
    error: asked ? error : null,
  }
}
