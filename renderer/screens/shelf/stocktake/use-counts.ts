/** What is written in the fields of a stocktake, read as whole numbers. */
import { useMemo, useState } from 'react'
import { useSettings } from '../../../app/settings.tsx'
import { parseQuantity, type QuantityProblem } from '../../../parts/quantity/parse-quantity.ts'
import type { Counts } from './stocktake.ts'

/** None there is a count as good as any. */
const range = { min: 0, max: 100_000 }

export interface WrittenCounts {
  readonly texts: ReadonlyMap<string, string>
  readonly counts: Counts
  /** What is wrong with what is written, by lot. */
  readonly problems: ReadonlyMap<string, QuantityProblem>
  write: (texts: Readonly<Record<string, string>>) => void
  clear: () => void
}

export function useCounts(): WrittenCounts {
  const settings = useSettings()
  const [texts, setTexts] = useState<ReadonlyMap<string, string>>(new Map())
  const read = useMemo(() => {
    const counts = new Map<string, number>()
    const problems = new Map<string, QuantityProblem>()
    for (const [lotId, text] of texts) {
      if (text.trim() === '') continue
      const parsed = parseQuantity(text, { ...settings, dimension: 'count', range })
      if (parsed.ok) counts.set(lotId, parsed.value)
      else problems.set(lotId, parsed.problem)
    }
    return { counts, problems }
  }, [texts, settings])
  return {
    texts,
    ...read,
    write: (written) => setTexts((before) => new Map([...before, ...Object.entries(written)])),
    clear: () => setTexts(new Map()),
  }
}
