/** Opens a batch of the plan as a draft, with its numbers as planned. */
import { useWords } from '../../../app/words/use-words.ts'
import { useKindName } from '../../../parts/names/use-kind-name.ts'
import { useNewDraft } from '../../../parts/plan/use-new-draft.ts'
import { useTimes } from '../../../parts/time/use-times.ts'
import type { SeasonBatch, SeasonPlan } from '../../../../shared/schemas/season.ts'

export function useOpenBatch({ madeAt }: Pick<SeasonPlan, 'madeAt'>) {
  const t = useWords()
  const kindName = useKindName()
  const times = useTimes()
  const { begin, error, isPending } = useNewDraft()
  const open = ({ kindId, startAt, spec }: SeasonBatch) =>
    begin({
      name: t('season.batches.name', {
        kind: kindName(kindId),
        year: String(new Date(startAt).getFullYear()),
      }),
      note: t('season.batches.note', { day: times.day(madeAt) }),
      spec,
      pins: [],
    })
  return { open, error, isPending }
}
