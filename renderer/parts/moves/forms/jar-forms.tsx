/** Forms of moves that need little more than a jar: water, stirring, crushing, a remark. */
import { useWords } from '../../../app/words/use-words.ts'
import { TextInput } from '../../fields/text-input.tsx'
import { QuantityField } from '../../quantity/quantity-field.tsx'
import { useQuantities } from '../../quantity/use-quantities.ts'
import type { WaterDraft } from '../drafts/adding.ts'
import { hasFruit, ownJars } from '../drafts/log-context.ts'
import type { RemarkDraft, TendingDraft } from '../drafts/tending.ts'
import { JarPicker } from '../jar-picker.tsx'
import { useProblemWords, type DraftFormProps } from './form-basics.ts'
import { IntoJars } from './into-jars.tsx'
import { WhenAndNote } from './when-and-note.tsx'

export function WaterForm(props: DraftFormProps<WaterDraft>) {
  const { draft, onChange, problems } = props
  const t = useWords()
  const { text } = useQuantities()
  return (
    <>
      <IntoJars
        {...props}
        jarIds={draft.jarIds}
        onChoose={(jarIds) => onChange({ ...draft, jarIds })}
      />
      <QuantityField
        label={t(draft.jarIds.length > 1 ? 'batch.form.amountEach' : 'batch.form.amount')}
        dimension="volume"
        value={draft.amount}
        onChange={(amount) => onChange({ ...draft, amount })}
        isRequired
        showsProblem={problems.length > 0}
        autoFocus={draft.jarIds.length > 0}
      />
      <WhenAndNote
        draft={draft}
        onChange={onChange}
        problems={problems}
        isMoreFilled={draft.temperatureC !== undefined}
      >
        <QuantityField
          label={t('batch.form.temperature')}
          dimension="temperature"
          value={draft.temperatureC}
          onChange={(temperatureC) => onChange({ ...draft, temperatureC })}
          description={t('batch.form.temperatureHint', { usual: text(20, 'temperature') })}
        />
      </WhenAndNote>
    </>
  )
}

export function TendingForm(props: DraftFormProps<TendingDraft>) {
  const { draft, onChange, context, problems, isAmending } = props
  const t = useWords()
  const problemWords = useProblemWords(problems)
  const own = ownJars(context)
  const fitting = draft.kind === 'crush' ? own.filter(hasFruit) : own
  const chosen = context.jars.filter(({ jar }) => draft.jarIds.includes(jar.id))
  return (
    <>
      <JarPicker
        label={t('batch.form.which')}
        jars={[...new Set([...fitting, ...chosen])]}
        moreJars={[]}
        value={draft.jarIds}
        onChange={(jarIds) => onChange({ ...draft, jarIds })}
        isMultiple={!isAmending}
        batchId={context.batchId}
        problem={problemWords('jarIds', 'chooseJar')}
      />
      <WhenAndNote draft={draft} onChange={onChange} problems={problems} />
    </>
  )
}

export function RemarkForm({ draft, onChange, problems }: DraftFormProps<RemarkDraft>) {
  const t = useWords()
  const problemWords = useProblemWords(problems)
  return (
    <>
      <TextInput
        label={t('batch.form.remark')}
        value={draft.note}
        onChange={(note) => onChange({ ...draft, note })}
        isRequired
        rows={3}
        maxLength={4000}
        problem={problemWords('note')}
        autoFocus
      />
      <WhenAndNote draft={draft} onChange={onChange} problems={problems} hasNote={false} />
    </>
  )
}
