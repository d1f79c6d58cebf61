/** A glass tasted: of which jar or bottles, what it was like, and in words. */
import { useWords } from '../../../app/words/use-words.ts'
import { Segments } from '../../fields/segments.tsx'
import { TextInput } from '../../fields/text-input.tsx'
import { TasteFields } from '../../tasting/taste-fields.tsx'
import { hasLiquid, ownJars } from '../drafts/log-context.ts'
import type { TasteDraft } from '../drafts/tasting.ts'
import { JarPicker } from '../jar-picker.tsx'
import { BottleLotField } from './bottle-lot-field.tsx'
import { useProblemWords, type DraftFormProps } from './form-basics.ts'
import { WhenAndNote } from './when-and-note.tsx'

export function TasteForm({ draft, onChange, context, problems }: DraftFormProps<TasteDraft>) {
  const t = useWords()
  const problemWords = useProblemWords(problems)
  const change = (part: Partial<TasteDraft>) => onChange({ ...draft, ...part })
  const jars = ownJars(context).filter(hasLiquid)
  const chosen = context.jars.find(({ jar }) => jar.id === draft.jarId)
  const isOfBottles = draft.bottleLotId !== undefined
  const hasBoth = context.bottleLots.length > 0 && jars.length > 0
  return (
    <>
      {hasBoth && (
        <Segments
          label={t('batch.form.taste.what')}
          value={isOfBottles ? 'bottles' : 'jar'}
          onChange={(what) =>
            change(
              what === 'jar'
                ? { jarId: jars[0]?.jar.id, bottleLotId: undefined }
                : { jarId: undefined, bottleLotId: context.bottleLots[0]?.id },
            )
          }
          choices={(['jar', 'bottles'] as const).map((value) => ({
            value,
            label: t(`batch.form.taste.${value}`),
          }))}
        />
      )}
      {isOfBottles ? (
        <BottleLotField
          lots={context.bottleLots}
          value={draft.bottleLotId}
          onChange={(bottleLotId) => change({ bottleLotId })}
          problem={problemWords('bottleLotId', 'chooseLot')}
        />
      ) : (
        <JarPicker
          label={t('batch.form.which')}
          jars={chosen && !jars.includes(chosen) ? [...jars, chosen] : jars}
          moreJars={[]}
          value={draft.jarId === undefined ? [] : [draft.jarId]}
          onChange={([jarId]) => change({ jarId })}
          batchId={context.batchId}
          problem={problemWords('jarId', 'chooseJar')}
        />
      )}
      <TasteFields tasting={draft.tasting} onChange={(tasting) => change({ tasting })} />
      <TextInput
        label={t('shelf.taste.words')}
        value={draft.note}
        onChange={(note) => change({ note })}
        rows={3}
        maxLength={4000}
      />
      <WhenAndNote draft={draft} onChange={onChange} problems={problems} hasNote={false} />
    </>
  )
}
