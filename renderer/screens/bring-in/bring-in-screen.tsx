/** Coming from a spreadsheet: a file, what its columns are, and a look at every row before any is written. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { Button, ButtonLink } from '../../parts/button/button.tsx'
import { Page } from '../../parts/page/page.tsx'
import { useQuantities } from '../../parts/quantity/use-quantities.ts'
import { ColumnsStep } from './columns-step.tsx'
import type { SheetKind } from './fields.ts'
import { FileStep } from './file-step.tsx'
import { RowsStep } from './rows-step.tsx'
import { sumsOf, type Sums } from './sums.ts'
import { useAccept, useColumns, useFile, useRows } from './use-bring-in.ts'
import styles from './bring-in.module.css'

const steps = ['file', 'columns', 'rows'] as const
type Step = (typeof steps)[number]

/** Of the kind that whoever leads here has in mind; the first step asks again. */
export function BringInScreen({ kind }: { kind: SheetKind }) {
  const t = useWords()
  const [step, setStep] = useState<Step>('file')
  const [done, setDone] = useState<Sums>()
  const file = useFile(kind)
  const columns = useColumns(file)
  const rows = useRows(file, columns)
  const accepting = useAccept(file, rows)
  const sums = sumsOf(accepting.ready)
  return (
    <Page title={t('sheets.title')} lead={t('sheets.lead')}>
      <ol className={styles.steps} aria-label={t('sheets.steps')}>
        {steps.map((one, at) => (
          <li key={one} aria-current={one === step && !done ? 'step' : undefined}>
            {at + 1} {t(`sheets.step.${one}`)}
          </li>
        ))}
      </ol>
      {done ? (
        <Done kind={file.kind} sums={done} onBack={() => setDone(undefined)} />
      ) : (
        <>
          {step === 'file' && <FileStep state={file} onNext={() => setStep('columns')} />}
          {step === 'columns' && (
            <ColumnsStep
              kind={file.kind}
              state={columns}
              onBack={() => setStep('file')}
              onNext={() => setStep('rows')}
            />
          )}
          {step === 'rows' && (
            <RowsStep
              kind={file.kind}
              columns={columns}
              state={rows}
              accepting={accepting}
              sums={sums}
              onBack={() => setStep('columns')}
              onAccept={() => accepting.accept(() => setDone(sums))}
            />
          )}
        </>
      )}
    </Page>
  )
}

interface DoneProps {
  kind: SheetKind
  sums: Sums
  onBack: () => void
}

function Done({ kind, sums, onBack }: DoneProps) {
  const t = useWords()
  const quantities = useQuantities()
  return (
    <div className={styles.step}>
      <output>
        {kind === 'stock'
          ? t('sheets.doneStock', { count: sums.rowCount })
          : t('sheets.done', {
              count: sums.bottleCount,
              volume: quantities.text(sums.volumeMl, 'volume'),
            })}
      </output>
      <div className={styles.buttons}>
        <ButtonLink kind="primary" href={kind === 'stock' ? '/cellar-room' : '/shelf'}>
          {t(kind === 'stock' ? 'sheets.toPantry' : 'sheets.toShelf')}
        </ButtonLink>
        <Button onPress={onBack}>{t('sheets.backToRows')}</Button>
      </div>
    </div>
  )
}
