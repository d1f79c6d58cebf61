/** Acid that the pantry lacks: bought with the same entry, and taken back with it. */
import { useWords } from '../../../app/words/use-words.ts'
import { QuantityField } from '../../../parts/quantity/quantity-field.tsx'
import styles from './acid-bought.module.css'
import type { AcidPurchase } from './recording.ts'

interface AcidBoughtProps {
  bought: AcidPurchase
  onChange: (bought: AcidPurchase) => void
}

export function AcidBought({ bought, onChange }: AcidBoughtProps) {
  const t = useWords()
  return (
    <div className={styles.bought}>
      <p className={styles.title}>{t('marry.record.acidBought')}</p>
      <QuantityField
        label={t('marry.record.acidMass')}
        dimension="mass"
        value={bought.massG}
        onChange={(massG) => onChange({ ...bought, massG })}
        description={t('marry.record.acidMassHint')}
      />
      <QuantityField
        label={t('marry.record.acidPrice')}
        dimension="money"
        value={bought.priceMinor}
        onChange={(priceMinor) => onChange({ ...bought, priceMinor })}
      />
    </div>
  )
}
