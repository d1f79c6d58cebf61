/** Liquid off the fruit into another vessel: drawn off, or pressed. */
import { useWords } from '../../../app/words/use-words.ts'
import { QuantityField } from '../../quantity/quantity-field.tsx'
import { useQuantities } from '../../quantity/use-quantities.ts'
import { freeMl, hasFruit, hasLiquid, ownJars } from '../drafts/log-context.ts'
import type { PouringOffDraft } from '../drafts/pouring-off.ts'
import { JarPicker } from '../jar-picker.tsx'
import { useProblemWords, type DraftFormProps } from './form-basics.ts'
import { ToJar } from './to-jar.tsx'
import { WhenAndNote } from './when-and-note.tsx'

export function PouringOffForm(props: DraftFormProps<PouringOffDraft>) {
  const { draft, onChange, context, problems, isAmending } = props
  const t = useWords()
  const { text } = useQuantities()
  const problemWords = useProblemWords(problems)
  const change = (part: Partial<PouringOffDraft>) => onChange({ ...draft, ...part })
  const chosen = context.jars.filter(({ jar }) => draft.fromJarIds.includes(jar.id))
  const able = ownJars(context).filter(draft.kind === 'press' ? hasFruit : hasLiquid)
  const pouringMl = chosen.reduce((sum, standing) => sum + freeMl(standing), 0)
  return (
    <>
      <JarPicker
        label={t('batch.form.from')}
        jars={[...new Set([...able, ...chosen])]}
        moreJars={[]}
        value={draft.fromJarIds}
        onChange={(fromJarIds) => change({ fromJarIds })}
        isMultiple={!isAmending}
        batchId={context.batchId}
        problem={problemWords('fromJarIds', 'chooseJar')}
      />
      <ToJar
        context={context}
        value={draft.toJarId}
        onChange={(toJarId) => change({ toJarId })}
        problems={problems}
        volumeMl={draft.volumeMl === undefined ? pouringMl : draft.volumeMl * chosen.length}
        not={draft.fromJarIds}
      />
      <QuantityField
        label={t(chosen.length > 1 ? 'batch.form.measuredEach' : 'batch.form.measured')}
        dimension="volume"
        value={draft.volumeMl}
        onChange={(volumeMl) => change({ volumeMl })}
        description={
          draft.kind === 'press'
            ? t('batch.form.emptyMeansPressed')
            : t('batch.form.emptyMeansAll', { amount: text(pouringMl, 'volume') })
        }
        autoFocus
      />
      <WhenAndNote draft={draft} onChange={onChange} problems={problems} />
    </>
  )
}
