/** How jars stand: the warmth of the place, and how often they are turned. */
import { useWords } from '../../../app/words/use-words.ts'
import { Turned } from '../../../../shared/schemas/moves.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { QuantityField } from '../../quantity/quantity-field.tsx'
import type { KeepingDraft } from '../drafts/keeping.ts'
import { ownJars } from '../drafts/log-context.ts'
import { JarPicker } from '../jar-picker.tsx'
import { useProblemWords, type DraftFormProps } from './form-basics.ts'
import { WhenAndNote } from './when-and-note.tsx'

const asBefore = 'asBefore'

export function KeepingForm(props: DraftFormProps<KeepingDraft>) {
  const { draft, onChange, context, problems, isAmending } = props
  const t = useWords()
  const problemWords = useProblemWords(problems)
  const chosen = context.jars.filter(({ jar }) => draft.jarIds.includes(jar.id))
  return (
    <>
      <JarPicker
        label={t('batch.form.which')}
        jars={[...new Set([...ownJars(context), ...chosen])]}
        moreJars={[]}
        value={draft.jarIds}
        onChange={(jarIds) => onChange({ ...draft, jarIds })}
        isMultiple={!isAmending}
        batchId={context.batchId}
        problem={problemWords('jarIds', 'chooseJar')}
      />
      <QuantityField
        label={t('batch.form.standsAt')}
        dimension="temperature"
        value={draft.temperatureC}
        onChange={(temperatureC) => onChange({ ...draft, temperatureC })}
        description={t('batch.form.standsAtHint')}
        problem={problemWords('temperatureC')}
        range={{ min: 0, max: 40 }}
        autoFocus={draft.jarIds.length > 0}
      />
      <ChoiceField
        label={t('batch.form.turned')}
        value={draft.turned ?? asBefore}
        onChange={(turned) =>
          onChange({ ...draft, turned: turned === asBefore ? undefined : turned })
        }
        choices={[
          { value: asBefore, label: t('batch.form.turnedAsBefore') },
          ...Turned.options.map((value) => ({ value, label: t(`codes.turned.${value}`) })),
        ]}
        isRequired={false}
      />
      <WhenAndNote draft={draft} onChange={onChange} problems={problems} />
    </>
  )
}
