/** One line of the ledger: when, what, and the composition right after; its grams on request. */
import { useId, useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import type { LedgerStep } from '../../../../shared/schemas/cellar.ts'
import { Button } from '../../../parts/button/button.tsx'
import { useJars } from '../../../parts/names/use-names.ts'
import { Strength, Sugar } from '../../../parts/quantity/composition.tsx'
import { Quantity } from '../../../parts/quantity/quantity.tsx'
import { useTimes } from '../../../parts/time/use-times.ts'
import { useMoveWords } from '../../../parts/moves/use-move-words.ts'
import { ReadingMeaning } from './reading-meaning.tsx'
import { StepMenu, type StepChange } from '../../../parts/amending/step-menu.tsx'
import { TransfersTable } from './transfers-table.tsx'
import styles from './ledger.module.css'

interface LedgerRowProps {
  step: LedgerStep
  onChange: (change: StepChange) => void
}

export function LedgerRow({ step, onChange }: LedgerRowProps) {
  const t = useWords()
  const times = useTimes()
  const what = useMoveWords()(step.recorded.move)
  const [isOpen, setIsOpen] = useState(false)
  const detailId = useId()
  const { move } = step.recorded
  return (
    <>
      <tr className={styles.row}>
        <td className={styles.when}>
          <time dateTime={move.at}>{times.moment(move.at)}</time>
        </td>
        <th scope="row" className={styles.what}>
          {move.kind === 'remark' ? null : <span>{what}</span>}
          {move.note && <span className={styles.note}>{move.note}</span>}
          {step.recorded.version > 1 && (
            <span className={styles.quiet}>{t('batch.ledger.amended')}</span>
          )}
          <ReadingMeaning step={step} />
        </th>
        <td className={styles.after}>
          <After step={step} />
        </td>
        <td className={styles.actions}>
          <div className={styles.buttons}>
            {step.transfers.length > 0 && (
              <Button
                kind="quiet"
                onPress={() => setIsOpen(!isOpen)}
                aria-expanded={isOpen}
                aria-controls={detailId}
              >
                {t('batch.ledger.grams')}
              </Button>
            )}
            <StepMenu what={what} onChoose={onChange} />
          </div>
        </td>
      </tr>
      {isOpen && (
        <tr id={detailId} className={styles.detail}>
          <td colSpan={4}>
            <TransfersTable transfers={step.transfers} />
          </td>
        </tr>
      )}
    </>
  )
}

/** Strength, sugar and volume of each jar touched, right after the move. */
function After({ step: { after, emptied } }: Pick<LedgerRowProps, 'step'>) {
  const t = useWords()
  const jars = useJars()
  const name = (jarId: string) => jars.get(jarId)?.jar.name ?? t('parts.place.theJar')
  return (
    <ul className={styles.jars}>
      {after.map(({ jarId, liquid }) => (
        <li key={jarId} className={styles.jar}>
          <span>{name(jarId)}</span>
          {liquid ? (
            <>
              <Strength pctVol={liquid.strengthPctVol} />
              <Sugar gPerL={liquid.sugarGPerL} />
              <Quantity value={liquid.volumeMl} dimension="volume" />
            </>
          ) : (
            <span className={styles.noLiquid}>{t('batch.timeline.noLiquid')}</span>
          )}
        </li>
      ))}
      {emptied.map((jarId) => (
        <li key={jarId} className={styles.quiet}>
          {t('batch.ledger.emptied', { jar: name(jarId) })}
        </li>
      ))}
    </ul>
  )
}
