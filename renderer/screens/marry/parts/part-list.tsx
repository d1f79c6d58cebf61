/** What can go in, drawn with what is there: chosen by a tick, limited where the maker says so. */
import { memo } from 'react'
import { Button, Disclosure, DisclosurePanel, Heading } from 'react-aria-components'
import { useWords } from '../../../app/words/use-words.ts'
import type { BlendAmount, PartLimits } from '../../../../shared/schemas/marrying.ts'
import { classes } from '../../../parts/classes.ts'
import type { Entries } from '../entries.ts'
import type { PlaceShown } from '../places.ts'
import { PartRow } from './part-row.tsx'
import { scaleFor } from './place-vessel.tsx'
import styles from './part-list.module.css'

export interface PartListProps {
  places: readonly PlaceShown[]
  parts: Entries['parts']
  /** Best one that stays the same, so that only rows that change are drawn anew. */
  onChange: (place: string, limits: PartLimits | undefined) => void
  /** What the answer takes of each. */
  amounts: readonly BlendAmount[]
  /** What stands at the head: extracts when they are married, the pantry when one is mended. */
  first?: 'jars' | 'pantry'
}

const rowPx = 56

/** Bottles are many and rarely opened: they stay folded until one is chosen. */
const groups = {
  jars: ['jars', 'pantry', 'bottles'],
  pantry: ['pantry', 'jars', 'bottles'],
} as const

export const PartList = memo(function PartList({
  places,
  parts,
  onChange,
  amounts,
  first = 'jars',
}: PartListProps) {
  const t = useWords()
  const mmPerPixel = scaleFor(
    places.map(({ drawn }) => drawn),
    rowPx,
  )
  return (
    <div className={styles.groups}>
      {groups[first].map((name) => {
        const own = places.filter(({ group }) => group === name)
        if (own.length === 0) return null
        const rows = (
          <ul aria-label={t(`marry.parts.${name}`)}>
            {own.map((shown) => (
              <PartRow
                key={shown.place}
                shown={shown}
                limits={parts[shown.place]}
                onChange={onChange}
                taken={amounts.find(({ place }) => place === shown.place)?.amount ?? 0}
                mmPerPixel={mmPerPixel}
              />
            ))}
          </ul>
        )
        if (name !== 'bottles')
          return (
            <div key={name}>
              <h3 className={styles.legend}>{t(`marry.parts.${name}`)}</h3>
              {rows}
            </div>
          )
        return (
          <Disclosure
            key={name}
            defaultExpanded={own.some(({ place }) => parts[place] !== undefined)}
          >
            <Heading level={3} className={classes(styles.legend)}>
              <Button slot="trigger" className={classes(styles.limitsButton)}>
                {t('marry.parts.more', { group: t(`marry.parts.${name}`), count: own.length })}
              </Button>
            </Heading>
            <DisclosurePanel>{rows}</DisclosurePanel>
          </Disclosure>
        )
      })}
    </div>
  )
})
