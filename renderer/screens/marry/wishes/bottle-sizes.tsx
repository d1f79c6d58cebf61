/** Sizes of bottle to fill, and how many of each. */
import { useWords } from '../../../app/words/use-words.ts'
import { Button } from '../../../parts/button/button.tsx'
import { QuantityField } from '../../../parts/quantity/quantity-field.tsx'
import type { BottleEntry } from '../entries.ts'
import styles from './wishes.module.css'

export interface BottleSizesProps {
  bottles: readonly BottleEntry[]
  onChange: (bottles: readonly BottleEntry[]) => void
}

const mostSizes = 6

export function BottleSizes({ bottles, onChange }: BottleSizesProps) {
  const t = useWords()
  const change = (index: number, part: Partial<BottleEntry>) =>
    onChange(bottles.map((one, i) => (i === index ? { ...one, ...part } : one)))
  return (
    <div className={styles.sizes}>
      {bottles.map((bottle, index) => (
        // Sizes are told apart by their place in the list alone.
        // oxlint-disable-next-line react/no-array-index-key
        <div key={index} className={styles.bottle}>
          <QuantityField
            label={t('marry.wishes.bottleSize')}
            dimension="volume"
            value={bottle.sizeMl}
            onChange={(sizeMl) => change(index, { sizeMl })}
            isRequired
          />
          <QuantityField
            label={t('marry.wishes.bottleCount')}
            dimension="count"
            value={bottle.count}
            onChange={(count) => change(index, { count })}
            description={t('marry.wishes.bottleCountHint')}
          />
          {bottles.length > 1 && (
            <Button kind="quiet" onPress={() => onChange(bottles.filter((_, i) => i !== index))}>
              {t('marry.wishes.removeSize')}
            </Button>
          )}
        </div>
      ))}
      {bottles.length < mostSizes && (
        <Button
          kind="quiet"
          onPress={() => onChange([...bottles, { sizeMl: undefined, count: undefined }])}
        >
          {t('marry.wishes.addSize')}
        </Button>
      )}
    </div>
  )
}
