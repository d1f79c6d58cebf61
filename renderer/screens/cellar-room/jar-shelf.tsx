/** The shelf: every vessel with its name, its batch, how full it is, and a way to change it. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { Link } from 'wouter'
import type { Answer } from '../../../shared/channels.ts'
import { Button } from '../../parts/button/button.tsx'
import { useBatches } from '../../parts/names/use-names.ts'
import { Empty, Section } from '../../parts/page/page.tsx'
import { Quantity } from '../../parts/quantity/quantity.tsx'
import { JarVessel } from '../../parts/vessel/jar-vessel.tsx'
import { vesselScale } from '../../parts/vessel/vessel.tsx'
import { JarDialog, type JarWanted } from './jar-dialog.tsx'
import styles from './jar-shelf.module.css'

type JarEntry = Answer<'jars.list'>[number]

export function JarShelf({ jars }: { jars: readonly JarEntry[] }) {
  const t = useWords()
  const [wanted, setWanted] = useState<JarWanted>()
  const [showsRetired, setShowsRetired] = useState(false)
  const shown = jars
    .filter(({ jar }) => !jar.isRetired || showsRetired)
    .toSorted((a, b) => a.jar.name.localeCompare(b.jar.name, undefined, { numeric: true }))
  const add = (
    <Button kind={jars.length === 0 ? 'primary' : 'plain'} onPress={() => setWanted('new')}>
      {t('cellarRoom.addJar')}
    </Button>
  )
  return (
    <Section title={t('cellarRoom.jars')} actions={jars.length > 0 && add}>
      {jars.length === 0 ? (
        <Empty action={add}>{t('cellarRoom.jarsEmpty')}</Empty>
      ) : (
        <ul className={styles.shelf}>
          {shown.map((entry) => (
            <ShelvedJar key={entry.jar.id} entry={entry} onChange={() => setWanted(entry)} />
          ))}
        </ul>
      )}
      {jars.some(({ jar }) => jar.isRetired) && !showsRetired && (
        <p>
          <Button kind="quiet" onPress={() => setShowsRetired(true)}>
            {t('cellarRoom.showRetired')}
          </Button>
        </p>
      )}
      <JarDialog wanted={wanted} onClose={() => setWanted(undefined)} />
    </Section>
  )
}

function ShelvedJar({ entry, onChange }: { entry: JarEntry; onChange: () => void }) {
  const t = useWords()
  const { jar, contents } = entry
  const batch = useBatches().get(contents?.batchId ?? '')?.batch
  return (
    <li className={styles.place}>
      <span className={styles.stand}>
        <JarVessel
          jar={jar}
          contents={contents}
          colour={batch?.colour}
          mmPerPixel={vesselScale.shelf}
        />
      </span>
      <span className={styles.name}>{jar.name}</span>
      <span className={styles.batch}>
        {batch ? (
          <Link href={`/batches/${encodeURIComponent(batch.id)}`}>{batch.name}</Link>
        ) : jar.isRetired ? (
          t('cellarRoom.retiredJar')
        ) : (
          t('cellarRoom.emptyJar')
        )}
      </span>
      <span className={styles.fill}>
        {contents && (
          <>
            <Quantity value={contents.fillMl} dimension="volume" />
            {' / '}
          </>
        )}
        <Quantity value={jar.capacityMl} dimension="volume" isSize />
      </span>
      <Button
        kind="quiet"
        aria-label={t('cellarRoom.changeJar', { name: jar.name })}
        onPress={onChange}
      >
        {t('cellarRoom.change')}
      </Button>
    </li>
  )
}
