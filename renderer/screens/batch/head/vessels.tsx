/** The batch's vessels side by side, drawn to one scale, each with its name and what stands in it. */
import { useWords } from '../../../app/words/use-words.ts'
import type { BatchSummary, BottleLot, JarContents } from '../../../../shared/schemas/cellar.ts'
import { useJars } from '../../../parts/names/use-names.ts'
import { Strength, Sugar } from '../../../parts/quantity/composition.tsx'
import { Quantity } from '../../../parts/quantity/quantity.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { Term } from '../../../parts/term/term.tsx'
import { JarVessel } from '../../../parts/vessel/jar-vessel.tsx'
import { bottleBrimMl } from '../../../parts/vessel/bottle-brim.ts'
import { Vessel, vesselScale } from '../../../parts/vessel/vessel.tsx'
import { restsAt } from '../../../parts/moves/composition/rests-at.ts'
import styles from './vessels.module.css'

export function Vessels({ summary: { batch, jars, bottleLots } }: { summary: BatchSummary }) {
  const t = useWords()
  const laidDown = bottleLots.filter(({ count }) => count > 0)
  if (jars.length === 0 && laidDown.length === 0)
    return <p className={styles.quiet}>{t('batch.answer.noVessel')}</p>
  return (
    <ul className={styles.row} aria-label={t('batch.answer.vessels')}>
      {jars.map((contents) => (
        <JarStanding key={contents.jarId} contents={contents} colour={batch.colour} />
      ))}
      {laidDown.map((lot) => (
        <BottlesStanding key={lot.id} lot={lot} colour={batch.colour} />
      ))}
    </ul>
  )
}

function JarStanding({ contents, colour }: { contents: JarContents; colour: string }) {
  const t = useWords()
  const { text } = useQuantities()
  const jar = useJars().get(contents.jarId)?.jar
  if (!jar) return null
  const { liquid, heldMl, bed } = contents
  const resting = restsAt(contents)
  return (
    <li className={styles.standing}>
      <JarVessel jar={jar} contents={contents} colour={colour} mmPerPixel={vesselScale.page} />
      <div className={styles.words}>
        <span className={styles.name}>{jar.name}</span>
        {liquid ? (
          <>
            <Strength pctVol={liquid.strengthPctVol} />
            <Sugar gPerL={liquid.sugarGPerL} />
            <Quantity value={liquid.volumeMl} dimension="volume" />
          </>
        ) : (
          <span className={styles.quiet}>{t('batch.timeline.noLiquid')}</span>
        )}
        {heldMl >= 1 && (
          <span className={styles.quiet}>
            {t('batch.answer.held', { held: text(heldMl, 'volume') })}
            <Term id="held" />
          </span>
        )}
        {bed.sugarG >= 1 && (
          <span className={styles.quiet}>
            {t('batch.answer.bed', { bed: text(bed.sugarG, 'mass') })}
            <Term id="bed" />
          </span>
        )}
        {resting && (
          <span className={styles.resting}>
            {t('batch.answer.rests')}
            <Strength pctVol={resting.strengthPctVol} />
            <Sugar gPerL={resting.sugarGPerL} />
          </span>
        )}
      </div>
    </li>
  )
}

function BottlesStanding({ lot, colour }: { lot: BottleLot; colour: string }) {
  const t = useWords()
  const { size } = useQuantities()
  const { count, bottleSizeMl, name, liquid } = lot
  return (
    <li className={styles.standing}>
      <Vessel
        shape="bottle"
        capacityMl={bottleBrimMl(bottleSizeMl)}
        fillMl={bottleSizeMl}
        liquidMl={bottleSizeMl}
        colour={colour}
        mmPerPixel={vesselScale.page}
      />
      <div className={styles.words}>
        <span className={styles.name}>{name}</span>
        <span>
          {t('batch.answer.bottles', {
            bottles: t('parts.bottles', { count }),
            size: size(bottleSizeMl, 'volume').text,
          })}
        </span>
        {liquid && <Strength pctVol={liquid.strengthPctVol} />}
        {liquid && <Sugar gPerL={liquid.sugarGPerL} />}
      </div>
    </li>
  )
}
