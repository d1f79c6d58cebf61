/** Filling bottles, and taking them out: drawn for the table, or given away. */
import { useWords } from '../../../app/words/use-words.ts'
import { TextInput } from '../../fields/text-input.tsx'
import { QuantityField } from '../../quantity/quantity-field.tsx'
import { fullBottles, type BottlesOutDraft, type BottlingDraft } from '../drafts/bottling.ts'
import { freeMl, hasLiquid, ownJars } from '../drafts/log-context.ts'
import { JarPicker } from '../jar-picker.tsx'
import { BottleLotField } from './bottle-lot-field.tsx'
import { useProblemWords, type DraftFormProps } from './form-basics.ts'
import { ShelfField } from './shelf-field.tsx'
import { WhenAndNote } from './when-and-note.tsx'

export function BottlingForm({
  draft,
  onChange,
  context,
  problems,
}: DraftFormProps<BottlingDraft>) {
  const t = useWords()
  const problemWords = useProblemWords(problems)
  const able = ownJars(context).filter(hasLiquid)
  const from = context.jars.find(({ jar }) => jar.id === draft.fromJarId)
  const fills = (fromJarId: string | undefined, sizeMl: number | undefined) => {
    const jar = context.jars.find((standing) => standing.jar.id === fromJarId)
    return jar && sizeMl ? fullBottles(freeMl(jar), sizeMl) : undefined
  }
  const full = fills(draft.fromJarId, draft.bottleSizeMl)
  /** A count that was all the liquid fills stays so when the jar or the bottle changes. */
  const change = (part: Partial<BottlingDraft>) => {
    const next = { ...draft, ...part }
    const follows = !('count' in part) && (draft.count === full || draft.count === undefined)
    onChange(follows ? { ...next, count: fills(next.fromJarId, next.bottleSizeMl) } : next)
  }
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
      <QuantityField
        label={t('batch.form.bottleSize')}
        dimension="volume"
        value={draft.bottleSizeMl}
        onChange={(bottleSizeMl) => change({ bottleSizeMl })}
        isRequired
        showsProblem={problems.length > 0}
        autoFocus
      />
      <QuantityField
        label={t('batch.form.bottleCount')}
        dimension="count"
        value={draft.count}
        onChange={(count) => change({ count })}
        isRequired
        showsProblem={problems.length > 0}
        description={full === undefined ? undefined : t('batch.form.bottlesFull', { count: full })}
      />
      <TextInput
        label={t('batch.form.bottleName')}
        value={draft.name}
        onChange={(name) => change({ name })}
        description={t('batch.form.bottleNameHint')}
      />
      <ShelfField value={draft.shelfId} onChange={(shelfId) => change({ shelfId })} />
      <WhenAndNote draft={draft} onChange={onChange} problems={problems} />
    </>
  )
}

export function BottlesOutForm({
  draft,
  onChange,
  context,
  problems,
}: DraftFormProps<BottlesOutDraft>) {
  const t = useWords()
  const problemWords = useProblemWords(problems)
  if (context.bottleLots.length === 0) return <p>{t('batch.form.noBottles')}</p>
  return (
    <>
      <BottleLotField
        lots={context.bottleLots}
        value={draft.bottleLotId}
        onChange={(bottleLotId) => onChange({ ...draft, bottleLotId, shelfId: undefined })}
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
      <WhenAndNote draft={draft} onChange={onChange} problems={problems} />
    </>
  )
}
