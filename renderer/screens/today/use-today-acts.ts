/** What can be done from Today itself: putting off, bringing back, with its undo; logging a round of turning. */
import { useState } from 'react'
import type { BatchSummary } from '../../../shared/schemas/cellar.ts'
import type { Task } from '../../../shared/schemas/tasks.ts'
import { newId } from '../../app/new-id.ts'
import { useWrite } from '../../app/queries.ts'
import { useWords } from '../../app/words/use-words.ts'
import { useTimes } from '../../parts/time/use-times.ts'
import { useTaskWords } from './use-task-words.ts'

export interface TodayActs {
  putOff: (task: Task, until: string) => void
  bringBack: (task: Task) => void
  logTurned: (tasks: readonly Task[]) => void
  /** An opened spirit of the pantry was looked at, and is shut. */
  sayShut: (lotId: string, name: string) => void
  readonly told: { readonly words: string; readonly undo?: () => void } | undefined
  readonly error: Error | null
}

export function useTodayActs(batches: readonly BatchSummary[]): TodayActs {
  const t = useWords()
  const times = useTimes()
  const words = useTaskWords(batches)
  const putting = useWrite('schedule.putOff')
  const bringing = useWrite('schedule.bringBack')
  const recording = useWrite('moves.record')
  const shutting = useWrite('pantry.sayShut')
  const [told, setTold] = useState<TodayActs['told']>()
  const day = (until: string) => times.day(`${until}T12:00:00`)

  /** Where it was before: on a day of its own, or put off until another. */
  function restore(task: Task, before: string | null) {
    const what = words.what(task)
    if (before === null)
      bringing.mutate(
        { taskId: task.id },
        { onSuccess: () => setTold({ words: t('today.putOff.undone', { what }) }) },
      )
    else
      putting.mutate(
        { taskId: task.id, until: before },
        {
          onSuccess: () =>
            setTold({ words: t('today.putOff.undoneTo', { what, day: day(before) }) }),
        },
      )
  }

  return {
    told,
    error: putting.error ?? bringing.error ?? recording.error ?? shutting.error,
    putOff: (task, until) =>
      putting.mutate(
        { taskId: task.id, until },
        {
          onSuccess: ({ before }) =>
            setTold({
              words: t('today.putOff.told', { what: words.what(task), day: day(until) }),
              undo: () => restore(task, before),
            }),
        },
      ),
    bringBack: (task) =>
      bringing.mutate(
        { taskId: task.id },
        {
          onSuccess: ({ before }) =>
            setTold({
              words: t('today.putOff.undone', { what: words.what(task) }),
              ...(before !== null && { undo: () => restore(task, before) }),
            }),
        },
      ),
    sayShut: (lotId, name) =>
      shutting.mutate(
        { lotId, isShut: true },
        {
          onSuccess: () =>
            setTold({
              words: t('today.shut.told', { name }),
              undo: () =>
                shutting.mutate(
                  { lotId, isShut: false },
                  { onSuccess: () => setTold({ words: t('today.shut.undone', { name }) }) },
                ),
            }),
        },
      ),
    logTurned: (tasks) => {
      if (recording.isPending) return
      const at = new Date().toISOString()
      const moves = tasks.flatMap(({ batchId, jarIds }) =>
        jarIds.map((jarId) => ({ at, kind: 'stir' as const, batchId, jarId })),
      )
      recording.mutate({ key: newId(), moves }, { onSuccess: () => setTold(undefined) })
    },
  }
}
