/** Marry: what goes in, what it shall be, and the amounts that follow at once. */
import { useCallback, useDeferredValue, useMemo, useState } from 'react'
import type { Batch } from '../../../shared/schemas/cellar.ts'
import type { MarryReply, MarryRequest, PartLimits } from '../../../shared/schemas/marrying.ts'
import { useLatest } from '../../app/use-latest.ts'
import { useWords } from '../../app/words/use-words.ts'
import { ButtonLink } from '../../parts/button/button.tsx'
import { FailureNote } from '../../parts/failure/failure-note.tsx'
import { Empty, Page, Section } from '../../parts/page/page.tsx'
import { requestOf, startEntries, withPart, type Entries } from './entries.ts'
import styles from './marry-screen.module.css'
import { PartList } from './parts/part-list.tsx'
import { Answer } from './result/answer.tsx'
import { Figures } from './result/figures.tsx'
import { PourTableView } from './result/pour-table-view.tsx'
import { tap } from './places.ts'
import { Recorded } from './record/recording-row.tsx'
import { Tabs } from './tabs.tsx'
import { usePlaces } from './use-places.ts'
import { WishesForm } from './wishes/wishes-form.tsx'

export function MarryScreen() {
  const t = useWords()
  const places = usePlaces()
  const [entries, setEntries] = useState<Entries>({ ...startEntries, ...untouched })
  const [into, setInto] = useState<Pick<Batch, 'id' | 'name'>>()
  const change = useCallback(
    (changed: Partial<Entries>) => setEntries((before) => ({ ...before, ...changed })),
    [],
  )
  const changePart = useCallback(
    (place: string, limits: PartLimits | undefined) =>
      setEntries((before) => withPart(before, place, limits)),
    [],
  )
  const request = requestOf(entries)
  const { data, error } = useLatest('marry.solve', request ?? idle, request !== undefined)
  const reply = request && data
  const solved = error ? undefined : reply
  const told = useDeferredValue(reply)
  const { parts, amount, holds, toJarId } = entries
  const asked = useMemo(() => ({ parts, amount, holds, toJarId }), [parts, amount, holds, toJarId])
  const recorded = useCallback(
    (batch: Pick<Batch, 'id' | 'name'>) => {
      setInto(batch)
      change(untouched)
    },
    [change],
  )
  const isEmpty = places.isHere && places.all.every(({ there }) => there === undefined)
  return (
    <Page title={t('marry.title')} lead={t('marry.lead')} before={<Tabs here="marry" />}>
      {isEmpty ? (
        <Empty action={<ButtonLink href="/batches">{t('marry.parts.goBatches')}</ButtonLink>}>
          {t('marry.parts.none')}
        </Empty>
      ) : (
        <div className={styles.columns}>
          <Section title={t('marry.parts.title')} term="marry">
            <PartList
              places={places.all}
              parts={entries.parts}
              onChange={changePart}
              amounts={told?.amounts ?? noAmounts}
            />
          </Section>
          <div className={styles.right}>
            <Section title={t('marry.wishes.title')} term="acid">
              <WishesForm entries={entries} onChange={change} />
            </Section>
            <Section title={t('marry.answer.title')}>
              <FailureNote error={request ? error : null} />
              <Recorded into={into} />
              {/* First and alone: the figures follow a slider within two frames. */}
              <Figures
                liquid={solved?.liquid}
                label={t('marry.answer.label')}
                otherwise={request ? solved && t('marry.answer.nothing') : t('marry.answer.choose')}
              />
              {solved && (
                <Answer
                  reply={solved}
                  told={told ?? solved}
                  asked={asked}
                  onChange={change}
                  places={places}
                  onRecorded={recorded}
                />
              )}
            </Section>
          </div>
        </div>
      )}
      {told?.pourTable && !error && <PourTableView table={told.pourTable} places={places} />}
    </Page>
  )
}

const noAmounts: MarryReply['amounts'] = []

/** Water is at hand in every house. */
const untouched = { parts: { [tap]: {} }, toJarId: undefined } as const

/** Never asked: only the type wants a question while there is none. */
const idle: MarryRequest = {
  parts: [{ place: tap }],
  wishes: {},
  prefer: 'useUp',
  holds: 'composition',
}
