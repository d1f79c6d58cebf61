/** Extracts poured together, all of each or a measured part. */
import { useWords } from '../../../app/words/use-words.ts'
import { QuantityField } from '../../quantity/quantity-field.tsx'
import { useQuantities } from '../../quantity/use-quantities.ts'
import { foreignJars, freeMl, hasLiquid, ownJars } from '../drafts/log-context.ts'
import type { MarryingDraft } from '../drafts/marrying.ts'
import { JarPicker } from '../jar-picker.tsx'
import { useProblemWords, type DraftFormProps } from './form-basics.ts'
import { ToJar } from './to-jar.tsx'
import { WhenAndNote } from './when-and-note.tsx'

export function MarryingForm({
  draft,
  onChange,
  context,
  problems,
}: DraftFormProps<MarryingDraft>) {
  const t = useWords()
  const { text } = useQuantities()
  const problemWords = useProblemWords(problems)
  const change = (part: Partial<MarryingDraft>) => onChange({ ...draft, ...part })
  const chosen = context.jars.filter(({ jar }) => draft.jarIds.includes(jar.id))
  const shown = [...new Set([...ownJars(context).filter(hasLiquid), ...chosen])]
  const wholeMl = chosen.reduce(
    (sum, standing) => sum + (draft.volumeMlByJar[standing.jar.id] ?? freeMl(standing)),
    0,
  )
  return (
    <>
      <JarPicker
        label={t('batch.form.parts')}
        jars={shown}
        moreJars={foreignJars(context).filter((one) => hasLiquid(one) && !shown.includes(one))}
        value={draft.jarIds}
        onChange={(jarIds) => change({ jarIds })}
        isMultiple
        batchId={context.batchId}
        problem={problemWords('jarIds', 'chooseJar')}
      />
      {chosen
        .filter(({ jar }) => jar.id !== draft.toJarId)
        .map((standing, index) => (
          <QuantityField
            key={standing.jar.id}
            label={t('batch.form.partAmount', { jar: standing.jar.name })}
            dimension="volume"
            value={draft.volumeMlByJar[standing.jar.id]}
            onChange={(volumeMl) =>
              change({ volumeMlByJar: { ...draft.volumeMlByJar, [standing.jar.id]: volumeMl } })
            }
            description={t('batch.form.partAll', { amount: text(freeMl(standing), 'volume') })}
            autoFocus={index === 0}
          />
        ))}
      <ToJar
        context={context}
        value={draft.toJarId}
        onChange={(toJarId) => change({ toJarId })}
        problems={problems}
        volumeMl={wholeMl}
      />
      <WhenAndNote draft={draft} onChange={onChange} problems={problems} />
    </>
  )
}
