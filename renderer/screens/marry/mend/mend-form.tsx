/** How the jar's liquid shall be, what may be added, and what that comes to. */
import { useCallback, useState } from 'react'
import type { MendRequest, PartLimits } from '../../../../shared/schemas/marrying.ts'
import { useLatest } from '../../../app/use-latest.ts'
import { useWords } from '../../../app/words/use-words.ts'
import { FailureNote } from '../../../parts/failure/failure-note.tsx'
import { Toggles } from '../../../parts/fields/toggles.tsx'
import { Section } from '../../../parts/page/page.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import type { WishedFor } from '../entries.ts'
import styles from '../marry-screen.module.css'
import { PartList } from '../parts/part-list.tsx'
import type { PlaceShown } from '../places.ts'
import type { Places } from '../use-places.ts'
import { WishField } from '../wishes/wish-field.tsx'
import { MendAnswer } from './mend-answer.tsx'
import { cures, helpersOf, type SumTrouble } from './troubles.ts'

export interface MendFormProps {
  jar: PlaceShown
  trouble: SumTrouble
  others: readonly PlaceShown[]
  places: Places
}

const dimensions = {
  strengthPctVol: 'strength',
  sugarGPerL: 'sugar',
  acidGPerL: 'acid',
} as const

export function MendForm({ jar, trouble, others, places }: MendFormProps) {
  const t = useWords()
  const { text } = useQuantities()
  const cure = cures[trouble]
  const { settled: liquid } = jar
  const [value, setValue] = useState(() => liquid && cure.guess(liquid))
  const [holds, setHolds] = useState<readonly WishedFor[]>(cure.holdsAtFirst ? cure.holds : [])
  const [parts, setParts] = useState<Readonly<Record<string, PartLimits>>>(() =>
    Object.fromEntries(helpersOf(cure, others).map((place) => [place, {}])),
  )
  const changePart = useCallback(
    (place: string, limits: PartLimits | undefined) =>
      setParts((before) => changed(before, place, limits)),
    [],
  )
  const request = liquid && requestOf(jar, { ...cure, value, holds, parts })
  const { data, error } = useLatest(
    'mend.solve',
    request ?? { jarId: jar.place.slice('jar:'.length), wishes: {}, parts: [] },
    request !== undefined,
  )
  if (!liquid) return null
  const now = liquid[cure.target]
  const isWrongWay = value !== undefined && (cure.isUp ? value < now : value > now)
  const nowWords = text(now, dimensions[cure.target])
  return (
    <div className={styles.columns}>
      <div className={styles.form}>
        <WishField
          name={cure.target}
          wish={{ sense: 'exactly', value }}
          onChange={(wish) => setValue(wish.value)}
          isExact
          description={
            isWrongWay
              ? t('marry.mend.wrongWay', { value: nowWords })
              : t('marry.mend.now', { value: nowWords })
          }
        />
        <div>
          <span className={styles.quiet}>{t('marry.mend.holdLabel')}</span>
          <Toggles
            label={t('marry.mend.holdLabel')}
            value={holds}
            onChange={setHolds}
            choices={cure.holds.map((one) => ({ value: one, label: t(`marry.wish.${one}`) }))}
          />
        </div>
        <Section title={t('marry.mend.with')}>
          <PartList
            places={others}
            parts={parts}
            onChange={changePart}
            amounts={data?.amounts ?? []}
            first="pantry"
          />
        </Section>
      </div>
      <div className={styles.right}>
        <FailureNote error={request ? error : null} />
        {!request && <p>{t('marry.mend.chooseMeans')}</p>}
        {request && data && !error && <MendAnswer reply={data} jar={jar} places={places} />}
      </div>
    </div>
  )
}

interface Asked {
  readonly target: WishedFor
  readonly value: number | undefined
  readonly holds: readonly WishedFor[]
  readonly parts: Readonly<Record<string, PartLimits>>
}

function requestOf(
  jar: PlaceShown,
  { target, value, holds, parts }: Asked,
): MendRequest | undefined {
  const { settled: liquid } = jar
  const chosen = Object.entries(parts).map(([place, limits]) => ({ place, ...limits }))
  if (value === undefined || !liquid || chosen.length === 0) return undefined
  const wishes: MendRequest['wishes'] = { [target]: { low: value, high: value } }
  for (const held of holds) wishes[held] = { low: liquid[held], high: liquid[held] }
  return { jarId: jar.place.slice('jar:'.length), wishes, parts: chosen }
}

function changed(
  parts: Readonly<Record<string, PartLimits>>,
  place: string,
  limits: PartLimits | undefined,
): Readonly<Record<string, PartLimits>> {
  const { [place]: _, ...others } = parts
  return limits ? { ...others, [place]: limits } : others
}
