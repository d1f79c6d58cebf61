/** Throwing away, and putting the book right where the cellar shows something else. */
import { useWords } from '../../../app/words/use-words.ts'
import { Segments } from '../../fields/segments.tsx'
import { QuantityField } from '../../quantity/quantity-field.tsx'
import { ownJars, type LogContext } from '../drafts/log-context.ts'
import type { CorrectDraft, DiscardDraft, Subject } from '../drafts/mending.ts'
import { JarPicker } from '../jar-picker.tsx'
import { BottleLotField } from './bottle-lot-field.tsx'
import { useProblemWords, type DraftFormProps } from './form-basics.ts'
import { LotField } from './lot-field.tsx'
import { WhenAndNote } from './when-and-note.tsx'

/** Opened bottles are mended on their own page: here only where such a move is changed. */
const subjectsFor = (chosen: Subject): readonly Subject[] =>
  chosen === 'opened' ? ['opened'] : ['jar', 'lot', 'bottles']

/** What the move is about: a vessel of the batch, something in the pantry, or its bottles. */
function SubjectFields<Draft extends DiscardDraft | CorrectDraft>(props: DraftFormProps<Draft>) {
  const { draft, onChange, context, problems } = props
  const t = useWords()
  const problemWords = useProblemWords(problems)
  const own = ownJars(context)
  const chosen = context.jars.find(({ jar }) => jar.id === draft.jarId)
  return (
    <>
      <Segments
        label={t('batch.form.subject')}
        value={draft.subject}
        onChange={(subject) => onChange({ ...draft, subject })}
        choices={subjectsFor(draft.subject).map((value) => ({
          value,
          label: t(`batch.form.subjects.${value}`),
        }))}
      />
      {draft.subject === 'jar' && (
        <JarPicker
          label={t('batch.form.which')}
          jars={chosen && !own.includes(chosen) ? [...own, chosen] : own}
          moreJars={[]}
          value={draft.jarId === undefined ? [] : [draft.jarId]}
          onChange={([jarId]) => onChange({ ...draft, jarId })}
          batchId={context.batchId}
          problem={problemWords('jarId', 'chooseJar')}
        />
      )}
      {draft.subject === 'lot' && (
        <LotField
          label={t('batch.form.which')}
          lots={context.pantry}
          value={draft.lotId}
          onChange={(lotId) => onChange({ ...draft, lotId })}
          problem={problemWords('lotId', 'chooseLot')}
        />
      )}
      {draft.subject === 'bottles' && (
        <BottleLotField
          lots={context.bottleLots}
          value={draft.bottleLotId}
          onChange={(bottleLotId) => onChange({ ...draft, bottleLotId })}
          problem={problemWords('bottleLotId', 'chooseLot')}
        />
      )}
    </>
  )
}

const isSpirit = (lotId: string | undefined, { pantry }: LogContext) =>
  pantry.find(({ id }) => id === lotId)?.goods.kind === 'spirit'

export function DiscardForm(props: DraftFormProps<DiscardDraft>) {
  const { draft, onChange, context, problems } = props
  const t = useWords()
  const change = (part: Partial<DiscardDraft>) => onChange({ ...draft, ...part })
  return (
    <>
      <SubjectFields {...props} />
      {draft.subject === 'jar' && (
        <Segments
          label={t('batch.form.part')}
          value={draft.part}
          onChange={(part) => change({ part })}
          choices={(['pulp', 'liquid', 'all'] as const).map((value) => ({
            value,
            label: t(`batch.form.parts3.${value}`),
          }))}
        />
      )}
      {draft.subject === 'lot' && (
        <QuantityField
          label={t('batch.form.discardAmount')}
          dimension={isSpirit(draft.lotId, context) ? 'volume' : 'mass'}
          value={draft.amount}
          onChange={(amount) => change({ amount })}
          description={t('batch.form.discardHint')}
        />
      )}
      {draft.subject === 'bottles' && (
        <QuantityField
          label={t('batch.form.count')}
          dimension="count"
          value={draft.count}
          onChange={(count) => change({ count })}
          isRequired
          showsProblem={problems.length > 0}
        />
      )}
      <WhenAndNote draft={draft} onChange={onChange} problems={problems} />
    </>
  )
}

export function CorrectForm(props: DraftFormProps<CorrectDraft>) {
  const { draft, onChange, context, problems } = props
  const t = useWords()
  const problemWords = useProblemWords(problems)
  const change = (part: Partial<CorrectDraft>) => onChange({ ...draft, ...part })
  return (
    <>
      <SubjectFields {...props} />
      {draft.subject === 'jar' && (
        <>
          <QuantityField
            label={t('batch.form.foundVolume')}
            dimension="volume"
            value={draft.volumeMl}
            onChange={(volumeMl) => change({ volumeMl })}
            description={t('batch.form.foundHint')}
            problem={problemWords('volumeMl')}
          />
          <QuantityField
            label={t('batch.form.foundStrength')}
            dimension="strength"
            value={draft.strengthPctVol}
            onChange={(strengthPctVol) => change({ strengthPctVol })}
          />
          <QuantityField
            label={t('batch.form.foundSugar')}
            dimension="sugar"
            value={draft.sugarGPerL}
            onChange={(sugarGPerL) => change({ sugarGPerL })}
          />
        </>
      )}
      {draft.subject === 'lot' && (
        <QuantityField
          label={t('batch.form.foundAmount')}
          dimension={isSpirit(draft.lotId, context) ? 'volume' : 'mass'}
          range={{ min: 0, max: 10_000_000 }}
          value={draft.amount}
          onChange={(amount) => change({ amount })}
          isRequired
          showsProblem={problems.length > 0}
        />
      )}
      {draft.subject === 'opened' && (
        <QuantityField
          label={t('batch.form.foundAmount')}
          dimension="volume"
          range={{ min: 0, max: 10_000_000 }}
          value={draft.amount}
          onChange={(amount) => change({ amount })}
          isRequired
          showsProblem={problems.length > 0}
        />
      )}
      {draft.subject === 'bottles' && (
        <QuantityField
          label={t('batch.form.foundAmount')}
          dimension="count"
          range={{ min: 0, max: 100_000 }}
          value={draft.count}
          onChange={(count) => change({ count })}
          isRequired
          showsProblem={problems.length > 0}
        />
      )}
      <WhenAndNote draft={draft} onChange={onChange} problems={problems} />
    </>
  )
}
