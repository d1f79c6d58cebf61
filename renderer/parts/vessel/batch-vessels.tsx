/** Where a batch stands: its jars, and a bottle for each lot, all to one scale. */
import type { BatchSummary } from '../../../shared/schemas/cellar.ts'
import { useJars } from '../names/use-names.ts'
import { JarVessel } from './jar-vessel.tsx'
import { bottleBrimMl } from './bottle-brim.ts'
import { Vessel, vesselScale } from './vessel.tsx'
import styles from './batch-vessels.module.css'

export interface BatchVesselsProps {
  summary: Pick<BatchSummary, 'batch' | 'jars' | 'bottleLots'>
  /** Draws these jars only. */
  jarIds?: readonly string[]
  mmPerPixel?: number
  /** Draws at most so many, and says how many more there are. */
  most?: number
}

export function BatchVessels({
  summary,
  jarIds,
  mmPerPixel = vesselScale.list,
  most = 4,
}: BatchVesselsProps) {
  const jars = useJars()
  const { colour } = summary.batch
  const standing = summary.jars.flatMap((contents) => {
    const entry = jars.get(contents.jarId)
    const isWanted = !jarIds || jarIds.includes(contents.jarId)
    return entry && isWanted ? [{ jar: entry.jar, contents }] : []
  })
  const lots = jarIds?.length ? [] : summary.bottleLots.filter(({ count }) => count > 0)
  const hidden = Math.max(0, standing.length + lots.length - most)
  return (
    <span className={styles.row}>
      {standing.slice(0, most).map(({ jar, contents }) => (
        <JarVessel
          key={jar.id}
          jar={jar}
          contents={contents}
          colour={colour}
          mmPerPixel={mmPerPixel}
        />
      ))}
      {lots.slice(0, Math.max(0, most - standing.length)).map((lot) => (
        <span key={lot.id} className={styles.lot}>
          <Vessel
            shape="bottle"
            capacityMl={bottleBrimMl(lot.bottleSizeMl)}
            fillMl={lot.bottleSizeMl}
            liquidMl={lot.bottleSizeMl}
            colour={colour}
            mmPerPixel={mmPerPixel}
          />
          <span className={styles.count}>{`×\u00a0${lot.count}`}</span>
        </span>
      ))}
      {hidden > 0 && <span className={styles.count}>{`+\u00a0${hidden}`}</span>}
    </span>
  )
}
