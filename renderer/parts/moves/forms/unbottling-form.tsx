/** Opening bottles of the batch back into a jar: which, how many, where to. */
import { useWords } from '../../../app/words/use-words.ts'
import { QuantityField } from '../../quantity/quantity-field.tsx'
import type { UnbottlingDraft } from '../drafts/unbottling.ts'
import { BottleLotField } from './bottle-lot-field.tsx'
import { useProblemWords, type DraftFormProps } from './form-basics.ts'
import { ToJar } from './to-jar.tsx'
import { WhenAndNote } from './when-and-note.tsx'

export function UnbottlingForm({
  draft,
  onChange,
  context,
  problems,
}: DraftFormProps<UnbottlingDraft>) {
  const t = useWords()
  const problemWords = useProblemWords(problems)
  if (context.bottleLots.length === 0) return <p>{t('batch.form.noBottles')}</p>
  const lot = context.bottleLots.find(({ id }) => id === draft.bottleLotId)
  return (
    <>
      <BottleLotField
        lots={context.bottleLots}
        value={draft.bottleLotId}
        onChange={(bottleLotId) => onChange({ ...draft, bottleLotId })}
        problem={problemWords('bottleLotId', 'chooseLot')}
      />
      <QuantityField
        label={t('batch.form.count')}
        dimension="count"
        value={draft.count}
        onChange={(count) => onChange({ ...draft, count })}
        isRequired
        showsProblem={problems.length > 0}
        autoFocus
      />
      <ToJar
        context={context}
        value={draft.toJarId}
        onChange={(toJarId) => onChange({ ...draft, toJarId })}
        problems={problems}
        volumeMl={(lot?.bottleSizeMl ?? 0) * (draft.count ?? 0)}
      />
      <WhenAndNote draft={draft} onChange={onChange} problems={problems} />
    </>
  )
}
