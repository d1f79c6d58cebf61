/** A move made on the shelf, changed: which bottles it was of stays as it was recorded. */
import { useWords } from '../../../app/words/use-words.ts'
import { useMoveWords } from '../use-move-words.ts'
import { QuantityField } from '../../quantity/quantity-field.tsx'
import type { ShelfDraft } from '../drafts/shelf-moves.ts'
import type { DraftFormProps } from './form-basics.ts'
import { WhenAndNote } from './when-and-note.tsx'

export function ShelfMoveForm({ draft, onChange, problems }: DraftFormProps<ShelfDraft>) {
  const t = useWords()
  const moveWords = useMoveWords()
  const { kind } = draft
  return (
    <>
      <p>{moveWords(draft.move)}</p>
      {(kind === 'breakBottle' || kind === 'shelve') && (
        <QuantityField
          label={t('batch.form.count')}
          dimension="count"
          value={draft.count}
          onChange={(count) => onChange({ ...draft, count })}
          isRequired
          showsProblem={problems.length > 0}
        />
      )}
      {(kind === 'pourGlass' || kind === 'topUp') && (
        <QuantityField
          label={t('batch.form.amount')}
          dimension="volume"
          value={draft.volumeMl}
          onChange={(volumeMl) => onChange({ ...draft, volumeMl })}
          description={t('batch.form.leftEmptyAll')}
        />
      )}
      <WhenAndNote draft={draft} onChange={onChange} problems={problems} />
    </>
  )
}
