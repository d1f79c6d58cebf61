/** The blend in large: strength, sugar, volume; what it costs quieter. */
import { memo } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import type { Cost } from '../../../../shared/schemas/marrying.ts'
import type { Liquid } from '../../../../shared/schemas/cellar.ts'
import { QuantityMark } from '../../../parts/quantity/quantity-mark.tsx'
import { Quantity } from '../../../parts/quantity/quantity.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { useAmounts } from '../use-amounts.ts'
import styles from './result.module.css'

export interface FiguresProps {
  liquid: Liquid | undefined
  label: string
  /** Said while there is no liquid to tell of. */
  otherwise?: string | undefined
}

/** There before it says anything: only then is what comes into it read out. */
export const Figures = memo(function Figures({ liquid, label, otherwise }: FiguresProps) {
  return (
    <output className={styles.figures} aria-label={label}>
      {liquid ? <Values liquid={liquid} /> : otherwise}
    </output>
  )
})

function Values({ liquid }: { liquid: Liquid }) {
  const t = useWords()
  const { text } = useQuantities()
  return (
    <>
      <span className={styles.strength}>
        <QuantityMark kind="strength" />
        <Quantity value={liquid.strengthPctVol} dimension="strength" />
      </span>
      <span className={styles.sugar}>
        <QuantityMark kind="sugar" />
        <Quantity value={liquid.sugarGPerL} dimension="sugar" />
      </span>
      <span className={styles.volume}>
        <Quantity value={liquid.volumeMl} dimension="volume" />
      </span>
      <span className={styles.quiet}>
        {t('marry.answer.acid', { acid: text(liquid.acidGPerL, 'acid') })}
      </span>
    </>
  )
}

const usualBottleMl = 500
const glassMl = 40

export interface CostLineProps {
  cost: Cost
  volumeMl: number
  /** The size of bottle to reckon with; half a litre where none is wished for. */
  bottleMl?: number | undefined
}

export function CostLine({ cost, volumeMl, bottleMl = usualBottleMl }: CostLineProps) {
  const t = useWords()
  const amounts = useAmounts()
  const { size } = useQuantities()
  const per = (ml: number) => amounts.cost({ ...cost, minor: (cost.minor * ml) / volumeMl })
  if (volumeMl <= 0) return null
  return (
    <p className={styles.costs}>
      <span>
        {t('marry.answer.cost')} <strong>{amounts.cost(cost)}</strong>
      </span>
      <span>
        {t('marry.answer.perBottle', {
          cost: per(bottleMl),
          size: size(bottleMl, 'volume').text,
        })}
      </span>
      <span>
        {t('marry.answer.perGlass', { cost: per(glassMl), size: size(glassMl, 'volume').text })}
      </span>
      {!cost.isComplete && <span className={styles.quiet}>{t('marry.answer.unknownCost')}</span>}
    </p>
  )
}
