/** What an instrument showed, for a jar. */
import { useWords } from '../../../app/words/use-words.ts'
import type { Instrument } from '../../../../shared/schemas/readings.ts'
import { ChoiceField } from '../../fields/choice-field.tsx'
import { QuantityField } from '../../quantity/quantity-field.tsx'
import type { Dimension } from '../../quantity/units.ts'
import { ownJars } from '../drafts/log-context.ts'
import { numbersOf, type ReadingDraft, type ShownNumber } from '../drafts/reading.ts'
import { JarPicker } from '../jar-picker.tsx'
import { useProblemWords, type DraftFormProps } from './form-basics.ts'
import { WhenAndNote } from './when-and-note.tsx'

const dimensionOf = {
  readingPctVol: 'strength',
  densityKgPerM3: 'density',
  brix: 'brix',
  densityBeforeKgPerM3: 'density',
  densityAfterKgPerM3: 'density',
  volumeMl: 'volume',
  temperatureC: 'temperature',
} as const satisfies Record<ShownNumber, Dimension>

const instruments = Object.keys(numbersOf) as Instrument[]

export function ReadingForm({ draft, onChange, context, problems }: DraftFormProps<ReadingDraft>) {
  const t = useWords()
  const problemWords = useProblemWords(problems)
  const change = (part: Partial<ReadingDraft>) => onChange({ ...draft, ...part })
  const own = ownJars(context)
  const chosen = context.jars.find(({ jar }) => jar.id === draft.jarId)
  return (
    <>
      <JarPicker
        label={t('batch.form.which')}
        jars={chosen && !own.includes(chosen) ? [...own, chosen] : own}
        moreJars={[]}
        value={draft.jarId === undefined ? [] : [draft.jarId]}
        onChange={([jarId]) => change({ jarId })}
        batchId={context.batchId}
        problem={problemWords('jarId', 'chooseJar')}
      />
      <ChoiceField
        label={t('batch.form.instrument')}
        value={draft.instrument}
        onChange={(instrument) => change({ instrument })}
        choices={instruments.map((value) => ({ value, label: t(`codes.instrument.${value}`) }))}
      />
      {numbersOf[draft.instrument].map((name, index) => (
        <QuantityField
          key={name}
          label={t(`batch.form.shown.${name}`)}
          dimension={dimensionOf[name]}
          // An alcoholometer is kept raw even where it shows what cannot be.
          {...(name === 'readingPctVol' && { range: { min: -20, max: 150 } })}
          value={draft.shown[name]}
          onChange={(value) => change({ shown: { ...draft.shown, [name]: value } })}
          isRequired
          showsProblem={problems.length > 0}
          autoFocus={index === 0 && draft.jarId !== undefined}
        />
      ))}
      <WhenAndNote draft={draft} onChange={onChange} problems={problems} />
    </>
  )
}
