/** A change of a recorded move in the making: what follows from it, and writing it once that is seen. */
import { useState } from 'react'
import type { Answer } from '../../../shared/channels.ts'
import type { Move, RecordedMove } from '../../../shared/schemas/moves.ts'
import { newId } from '../../app/new-id.ts'
import { useRead, useWrite } from '../../app/queries.ts'
import { useLatestAnswer } from '../../app/use-latest.ts'
import { useSettled, type Previewed } from '../moves/use-preview.ts'

export interface Amending {
  readonly previewed: Previewed
  readonly seen: Answer<'moves.previewAmend'> | undefined
  readonly tasks: Answer<'moves.previewTasks'> | undefined
  /** Later moves that are struck with it. */
  readonly struck: readonly RecordedMove[]
  strikeToo: () => void
  keepThem: () => void
  /** True once all that follows from this very change has been shown, and nothing stands in its way. */
  readonly isReady: boolean
  readonly isSaving: boolean
  readonly error: Error | null
  save: () => void
}

const none: readonly RecordedMove[] = []

/** `move` must keep its identity while nothing changes; undefined while something is missing in it. */
export function useAmending(
  recorded: RecordedMove,
  move: Move | null | undefined,
  onSaved: () => void,
): Amending {
  const amend = useWrite('moves.amend')
  const [key] = useState(newId)
  // What was struck belongs to the change it was looked at with: another one may spare it.
  const [chosen, setChosen] = useState({ move, struck: none })
  const struck = chosen.move === move ? chosen.struck : none
  const settled = useSettled(move)
  const asked = {
    moveId: recorded.id,
    move: settled ?? null,
    ...(struck.length > 0 && { alsoStrike: struck.map(seenVersion) }),
  }
  const isComplete = settled !== undefined && move !== undefined
  // A field that is empty for a moment asks nothing, and takes no question back.
  const [wanted, setWanted] = useState<typeof asked>()
  if (isComplete && JSON.stringify(wanted) !== JSON.stringify(asked)) setWanted(asked)
  // In a book of decades the answer about an old move takes seconds: questions must not pile up.
  const { query, isOfWanted } = useLatestAnswer(
    'moves.previewAmend',
    wanted ?? asked,
    wanted !== undefined,
  )
  const { data, error } = query
  const seen = move === undefined ? undefined : data
  const isOfThis = isComplete && settled === move && isOfWanted
  const isPossible = isOfThis && data?.refusals.length === 0
  const tasks = useRead('moves.previewTasks', asked, { isEnabled: isPossible }).data
  const isReady = isPossible && data.breaks.length === 0
  return {
    previewed: { preview: seen, moves: settled && isOfWanted ? [settled] : [], error },
    seen,
    tasks: isPossible ? tasks : undefined,
    struck,
    strikeToo: () =>
      setChosen({ move, struck: [...struck, ...(seen?.breaks ?? []).map((one) => one.recorded)] }),
    keepThem: () => setChosen({ move, struck: none }),
    isReady,
    isSaving: amend.isPending,
    error: amend.error,
    save: () => {
      if (move === undefined || !isReady || amend.isPending) return
      const { id: moveId, version: fromVersion } = recorded
      amend.mutate(
        { key, moveId, fromVersion, move, alsoStrike: struck.map(seenVersion) },
        { onSuccess: onSaved },
      )
    },
  }
}

const seenVersion = ({ id, version }: RecordedMove) => ({ moveId: id, fromVersion: version })
