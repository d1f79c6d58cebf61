/** The answer to what stands in the form, asked a moment after the last keystroke. */
import { useEffect, useState } from 'react'
import type { BenchReply, BenchRequest } from '../../../shared/schemas/bench.ts'
import { useRead } from '../../app/queries.ts'

export interface Measurement {
  readonly reply: BenchReply | undefined
  readonly error: Error | null
}

const pauseMs = 120

/** Never asked: only the type wants a question while there is none. */
const idle: BenchRequest = { instrument: 'proofToStrength', proof: 80 }

/** The question as a text, so that it keeps its identity while nothing in it changes. */
export function useMeasure(request: BenchRequest | undefined): Measurement {
  const asked = request && JSON.stringify(request)
  const settled = useSettled(asked)
  const isEnabled = asked !== undefined && settled !== undefined
  const question = settled === undefined ? idle : (JSON.parse(settled) as BenchRequest)
  const { data, error } = useRead('bench.measure', question, { isEnabled, keepsLast: true })
  if (!isEnabled) return { reply: undefined, error: null }
  return { reply: data, error }
}

function useSettled<Value>(value: Value): Value {
  const [settled, setSettled] = useState(value)
  useEffect(() => {
    const timer = setTimeout(() => setSettled(value), pauseMs)
    return () => clearTimeout(timer)
  }, [value])
  return settled
}
