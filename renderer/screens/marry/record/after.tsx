/** The vessel as the moves will leave it, or why they cannot be. */
import type { Move } from '../../../../shared/schemas/moves.ts'
import { useRead } from '../../../app/queries.ts'
import { useWords } from '../../../app/words/use-words.ts'
import { CautionNote } from '../../../parts/cautions/caution-note.tsx'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { useRefusalWords } from '../../../parts/failure/refusal-words.ts'
import { useBatches, useJars } from '../../../parts/names/use-names.ts'
import { Strength, Sugar } from '../../../parts/quantity/composition.tsx'
import { Quantity } from '../../../parts/quantity/quantity.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { JarVessel } from '../../../parts/vessel/jar-vessel.tsx'
import { vesselScale } from '../../../parts/vessel/vessel.tsx'
import styles from './after.module.css'

export function After({ moves, toJarId }: { moves: readonly Move[]; toJarId: string }) {
  const t = useWords()
  const jars = useJars()
  const batches = useBatches()
  const refusalWords = useRefusalWords()
  const { data, error } = useRead(
    'moves.preview',
    { moves: [...moves] },
    { isEnabled: moves.length > 0, keepsLast: true },
  )
  const { text } = useQuantities()
  const jar = jars.get(toJarId)?.jar
  const contents = data?.steps
    .flatMap(({ after }) => after)
    .findLast(({ jarId }) => jarId === toJarId)
  // Sugar lies at the bottom at first: what is told is the liquid once it has dissolved.
  const liquid = contents?.resting ?? contents?.liquid
  const [refused] = data?.refusals ?? []
  return (
    <div className={styles.after} aria-live="polite">
      <FailureNote error={error} />
      {refused && <p className={styles.refused}>{refusalWords(refused.refusal)}</p>}
      {data && data.breaks.length > 0 && (
        <p className={styles.refused}>{t('marry.record.breaks')}</p>
      )}
      {jar && contents && !refused && (
        <div className={styles.jar}>
          <JarVessel
            jar={jar}
            contents={contents}
            colour={batches.get(contents.batchId)?.batch.colour}
            mmPerPixel={vesselScale.shelf}
          />
          <p className={styles.words}>
            <span>{t('marry.record.after', { jar: jar.name })}</span>
            {liquid && (
              <span className={styles.liquid}>
                <Quantity value={liquid.volumeMl} dimension="volume" />
                <Strength pctVol={liquid.strengthPctVol} />
                <Sugar gPerL={liquid.sugarGPerL} />
                <span className={styles.acid}>
                  {t('marry.answer.acid', { acid: text(liquid.acidGPerL, 'acid') })}
                </span>
              </span>
            )}
          </p>
        </div>
      )}
      {data?.warnings
        .filter(({ jarId }) => jarId === toJarId)
        .map((caution) => (
          <CautionNote key={caution.code} caution={caution} place={jar?.name} />
        ))}
    </div>
  )
}
