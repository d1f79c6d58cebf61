/**
 * The wishes as the maker writes them, kept as they go: what is written stands at once, and goes
 * into the book when the hand rests. What another window keeps is taken over between two changes.
 */
import { useEffect, useRef, useState } from 'react'
import type { SeasonWishes } from '../../../shared/schemas/season.ts'
import { useWrite } from '../../app/queries.ts'
import { sameWishes } from './same-wishes.ts'

const restMs = 500

export interface KeptWishes {
  readonly wishes: SeasonWishes
  change: (changed: Partial<SeasonWishes>) => void
  readonly isKept: boolean
  readonly error: Error | null
}

export function useKeptWishes(inBook: SeasonWishes): KeptWishes {
  const { mutate, isPending, error } = useWrite('season.keepWishes')
  const [wishes, setWishes] = useState(inBook)
  const [sent, setSent] = useState(inBook)
  const [seen, setSeen] = useState(inBook)
  const isWaiting = !sameWishes(wishes, sent)
  if (inBook !== seen) {
    setSeen(inBook)
    if (!isWaiting && !isPending && !sameWishes(inBook, wishes)) {
      setWishes(inBook)
      setSent(inBook)
    }
  }

  useEffect(() => {
    if (!isWaiting || isPending) return
    const timer = setTimeout(() => {
      setSent(wishes)
      mutate(wishes)
    }, restMs)
    return () => clearTimeout(timer)
  }, [wishes, isWaiting, isPending, mutate])

  // Who leaves before the hand has rested loses nothing.
  const unsent = useRef<SeasonWishes>(undefined)
  useEffect(() => {
    unsent.current = isWaiting ? wishes : undefined
  }, [wishes, isWaiting])
  useEffect(
    () => () => {
      if (unsent.current) mutate(unsent.current)
    },
    [mutate],
  )

  return {
    wishes,
    change: (changed) => setWishes((before) => ({ ...before, ...changed })),
    isKept: !isWaiting && !isPending && error === null,
    error,
  }
}
