/** One instrument laid out for use: what it is for, its numbers, its answer, and where that can go. */
import { useState } from 'react'
import { useWordList, useWords } from '../../app/words/use-words.ts'
import type { Batch } from '../../../shared/schemas/cellar.ts'
import { Button, ButtonLink } from '../../parts/button/button.tsx'
import { Segments } from '../../parts/fields/segments.tsx'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { Term } from '../../parts/term/term.tsx'
import { Answer } from './answer.tsx'
import { modeOf, requestOf, type Entries } from './entries.ts'
import { Note } from './note.tsx'
import { RecordDialog } from './record-dialog.tsx'
import { ToolForm } from './tool-form.tsx'
import type { Tool } from './tools.ts'
import { useMeasure } from './use-measure.ts'
import { useStandard } from './use-standard.ts'
import styles from './bench-screen.module.css'

export interface ToolBenchProps {
  tool: Tool
  entries: Entries
  onChange: (changed: Partial<Entries>) => void
}

export function ToolBench({ tool, entries, onChange }: ToolBenchProps) {
  const t = useWords()
  const mode = modeOf(tool, entries)
  const { reply, error } = useMeasure(requestOf(mode, entries))
  return (
    <section className={styles.tool} aria-label={t(`bench.tool.${tool.id}.name`)}>
      <div className={styles.head}>
        <h2>{t(`bench.tool.${tool.id}.name`)}</h2>
        <p className={styles.what}>
          {t(`bench.tool.${tool.id}.what`, { standard: useStandard() })}
          {tool.term && <Term id={tool.term} />}
        </p>
      </div>
      {tool.steps && (
        <div className={styles.brief}>
          <Steps of={tool.steps} />
          {tool.care && <Note note={{ code: tool.care }} />}
        </div>
      )}
      {tool.modes.length > 1 && (
        <Segments
          label={t('bench.modes')}
          isLabelHidden
          value={mode.instrument}
          onChange={(instrument) => onChange({ instrument })}
          choices={tool.modes.map(({ instrument }) => ({
            value: instrument,
            label: t(`bench.mode.${instrument}`),
          }))}
        />
      )}
      <div className={styles.work}>
        <ToolForm key={mode.instrument} mode={mode} entries={entries} onChange={onChange} />
        <div className={styles.answer}>
          <Answer
            reply={reply}
            error={error}
            saidBefore={tool.care}
            action={reply?.reading && <Recording reading={reply.reading} />}
          />
        </div>
      </div>
    </section>
  )
}

function Steps({ of }: { of: NonNullable<Tool['steps']> }) {
  const { size } = useQuantities()
  const steps = useWordList()(`bench.steps.${of}`, { sample: size(250, 'volume').text })
  return (
    <ol className={styles.steps}>
      {steps.map((step) => (
        <li key={step}>{step}</li>
      ))}
    </ol>
  )
}

type Recordable = Parameters<typeof RecordDialog>[0]['reading']

function Recording({ reading }: { reading: NonNullable<Recordable> }) {
  const t = useWords()
  const [isOpen, setOpen] = useState(false)
  const [into, setInto] = useState<Batch>()
  return (
    <div className={styles.recorded}>
      <Button onPress={() => setOpen(true)}>{t('bench.record.open')}</Button>
      <output>{into && t('bench.record.done', { batch: into.name })}</output>
      {into && (
        <ButtonLink kind="quiet" href={`/batches/${into.id}`}>
          {t('bench.record.toBatch')}
        </ButtonLink>
      )}
      <RecordDialog
        reading={isOpen ? reading : undefined}
        onClose={() => setOpen(false)}
        onRecorded={(batch) => {
          setInto(batch)
          setOpen(false)
        }}
      />
    </div>
  )
}
