/** From the bottle back to fruit, spirit and sugar, as a picture. */
import { useWords } from '../../../app/words/use-words.ts'
import { useRead } from '../../../app/queries.ts'
import { LineageView } from '../../../charts/lineage-view.tsx'
import { ReadState } from '../../../parts/failure/read-state.tsx'

export function LineageSection({ bottleLotId }: { bottleLotId: string }) {
  const t = useWords()
  const lineage = useRead('lineage.of', { bottleLotId })
  return (
    <ReadState query={lineage}>
      {(found) => <LineageView lineage={found} title={t('shelf.lot.lineage')} towards="origins" />}
    </ReadState>
  )
}
