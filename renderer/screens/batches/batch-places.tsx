/** Which fruits are in a batch, and in which jars and bottles it stands, by name. */
import { useWords } from '../../app/words/use-words.ts'
import type { BatchSummary } from '../../../shared/schemas/cellar.ts'
import { useSettings } from '../../app/settings.tsx'
import { useFruitName, useFruits, useJars } from '../../parts/names/use-names.ts'
import styles from './batch-places.module.css'
import { listFormat } from '../../parts/formatters/formatters.ts'

export function BatchFruits({ summary }: { summary: BatchSummary }) {
  const { locale } = useSettings()
  const fruits = useFruits()
  const fruitName = useFruitName()
  const names = summary.fruitIds.flatMap((id) => {
    const fruit = fruits.get(id)
    return fruit ? [fruitName(fruit)] : []
  })
  // A batch is most often called by its fruit: then there is nothing to add.
  const batchName = summary.batch.name.toLocaleLowerCase(locale)
  if (names.every((name) => batchName.includes(name.toLocaleLowerCase(locale)))) return null
  return <span className={styles.fruits}>{listFormat(locale).format(names)}</span>
}

export function BatchPlaces({ summary }: { summary: BatchSummary }) {
  const t = useWords()
  const { locale } = useSettings()
  const jars = useJars()
  const names = summary.jars.flatMap(({ jarId }) => jars.get(jarId)?.jar.name ?? [])
  const bottles = summary.bottleLots.reduce((sum, { count }) => sum + count, 0)
  const places = bottles > 0 ? [...names, t('parts.bottles', { count: bottles })] : names
  return listFormat(locale).format(places)
}
