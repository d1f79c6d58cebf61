/** One liquid through a medium, with what it keeps back. */
import { useWords } from '../../../app/words/use-words.ts'
import { FilterMedium } from '../../../../shared/schemas/moves.ts'
import { Segments } from '../../fields/segments.tsx'
import { QuantityField } from '../../quantity/quantity-field.tsx'
import type { FilteringDraft } from '../drafts/filtering.ts'
import { freeMl, hasLiquid, ownJars } from '../drafts/log-context.ts'
import { JarPicker } from '../jar-picker.tsx'
import { useProblemWords, type DraftFormProps } from './form-basics.ts'
import { ToJar } from './to-jar.tsx'
import { WhenAndNote } from './when-and-note.tsx'

export function FilteringForm({
  draft,
  onChange,
  context,
  problems,
}: DraftFormProps<FilteringDraft>) {
  const t = useWords()
  const problemWords = useProblemWords(problems)
  const change = (part: Partial<FilteringDraft>) => onChange({ ...draft, ...part })
  const able = ownJars(context).filter(hasLiquid)
  const from = context.jars.find(({ jar }) => jar.id === draft.fromJarId)
  return (
    <>
      <JarPicker
        label={t('batch.form.from')}
        jars={from && !able.includes(from) ? [...able, from] : able}
        moreJars={[]}
        value={draft.fromJarId === undefined ? [] : [draft.fromJarId]}
        onChange={([fromJarId]) => change({ fromJarId })}
        batchId={context.batchId}
        problem={problemWords('fromJarId', 'chooseJar')}
      />
      <Segments
        label={t('batch.form.medium')}
        value={draft.medium}
        onChange={(medium) => change({ medium })}
        choices={FilterMedium.options.map((value) => ({
          value,
          label: t(`codes.medium.${value}`),
        }))}
      />
      <QuantityField
        label={t('batch.form.loss')}
        dimension="volume"
        range={{ min: 0, max: 10_000_000 }}
        value={draft.lossMl}
        onChange={(lossMl) => change({ lossMl })}
        description={t('batch.form.lossHint')}
        autoFocus
      />
      <ToJar
        context={context}
        value={draft.toJarId}
        onChange={(toJarId) => change({ toJarId })}
        problems={problems}
        volumeMl={from ? freeMl(from) : 0}
      />
      <WhenAndNote draft={draft} onChange={onChange} problems={problems} />
    </>
  )
}
