/** Batches side by side from their first day: did this year settle as the last one did? */
import { useState } from 'react'
import { Link, useLocation } from 'wouter'
import type { BatchSummary } from '../../../../shared/schemas/cellar.ts'
import type { ComparedBatch } from '../../../../shared/schemas/steeping.ts'
import { useRead } from '../../../app/queries.ts'
import { useWords } from '../../../app/words/use-words.ts'
import { mostCompared } from '../../../charts/compare-ink.ts'
import { CompareLines } from '../../../charts/compare-lines.tsx'
import { lastDayOf, type ComparedLine } from '../../../charts/compare-rows.ts'
import { CompareSign } from '../../../charts/compare-sign.tsx'
import { CompareTable } from '../../../charts/compare-table.tsx'
import { curveQuantities, type CurveQuantity } from '../../../charts/curve-quantities.ts'
import { Button, ButtonLink } from '../../../parts/button/button.tsx'
import { ReadState } from '../../../parts/failure/read-state.tsx'
import { ChoiceField } from '../../../parts/fields/choice-field.tsx'
import { Segments } from '../../../parts/fields/segments.tsx'
import { comparePath } from '../../../parts/names/compare-path.ts'
import { Empty, Page } from '../../../parts/page/page.tsx'
import { candidates } from './candidates.ts'
import styles from './compare-screen.module.css'

export function CompareScreen({ ids }: { ids: readonly string[] }) {
  const t = useWords()
  const list = useRead('batches.list', {})
  const known = list.data?.map(({ batch }) => batch.id)
  const shown = ids.filter((id) => known?.includes(id)).slice(0, mostCompared)
  const compared = useRead(
    'batches.compare',
    { batchIds: shown, points: 250 },
    { isEnabled: shown.length > 0, keepsLast: true },
  )
  return (
    <Page
      title={t('compare.title')}
      before={<Link href="/batches">{t('batch.back')}</Link>}
      lead={t('compare.lead')}
    >
      <ReadState query={list}>
        {(all) => (
          <>
            {shown.length === 0 ? (
              <Empty action={<ButtonLink href="/batches">{t('batch.back')}</ButtonLink>}>
                {t('compare.none')}
              </Empty>
            ) : (
              <ReadState query={compared}>
                {(found) => <Shown lines={linesOf(shown, all, found)} />}
              </ReadState>
            )}
            <Chosen ids={shown} all={all} />
          </>
        )}
      </ReadState>
    </Page>
  )
}

/** In the order asked for; one that is being fetched is not there yet. */
function linesOf(
  ids: readonly string[],
  all: readonly BatchSummary[],
  found: readonly ComparedBatch[],
): ComparedLine[] {
  return ids.flatMap((id) => {
    const batch = all.find((summary) => summary.batch.id === id)?.batch
    const compared = found.find(({ batchId }) => batchId === id)
    return batch && compared ? [{ batch, compared }] : []
  })
}

/** Steeping is seen best in its first months; years in a demijohn would press it to the edge. */
const firstDays = 90

function Shown({ lines }: { lines: readonly ComparedLine[] }) {
  const t = useWords()
  const [quantity, setQuantity] = useState<CurveQuantity>('strengthPctVol')
  const [span, setSpan] = useState<'first' | 'whole'>('first')
  const [isTable, setIsTable] = useState(false)
  const longest = lastDayOf(lines.map(({ compared }) => compared))
  const lastDay = span === 'first' ? Math.min(firstDays, longest) : longest
  const name = t(`batch.curve.quantity.${quantity}`)
  return (
    <section className={styles.shown} aria-label={name}>
      <div className={styles.choices}>
        <Segments
          label={t('batch.curve.show')}
          isLabelHidden
          value={quantity}
          onChange={setQuantity}
          choices={curveQuantities.map((value) => ({
            value,
            label: t(`batch.curve.quantity.${value}`),
          }))}
        />
        {longest > firstDays && (
          <Segments
            label={t('compare.span')}
            isLabelHidden
            value={span}
            onChange={setSpan}
            choices={(['first', 'whole'] as const).map((value) => ({
              value,
              label: t(`compare.spans.${value}`, { days: firstDays }),
            }))}
          />
        )}
        <Button kind="quiet" onPress={() => setIsTable(!isTable)}>
          {t(isTable ? 'batch.curve.asChart' : 'batch.curve.asTable')}
        </Button>
      </div>
      {isTable ? (
        <CompareTable lines={lines} quantity={quantity} lastDay={lastDay} />
      ) : (
        <CompareLines
          lines={lines}
          quantity={quantity}
          lastDay={lastDay}
          description={t('compare.description', {
            quantity: name,
            batches: lines.map(({ batch }) => batch.name).join(', '),
            days: Math.round(lastDay),
          })}
        />
      )}
    </section>
  )
}

/** The legend: each batch with its sign, to open or to take out; and one more to put beside them. */
function Chosen({ ids, all }: { ids: readonly string[]; all: readonly BatchSummary[] }) {
  const t = useWords()
  const [, navigate] = useLocation()
  const go = (chosen: readonly string[]) => navigate(comparePath(chosen), { replace: true })
  const others = candidates(all, ids)
  return (
    <div className={styles.chosen}>
      <ul className={styles.legend} aria-label={t('compare.legend')}>
        {ids.map((id, index) => {
          const batch = all.find((summary) => summary.batch.id === id)?.batch
          return (
            batch && (
              <li key={id}>
                <CompareSign index={index} colour={batch.colour} />
                <Link href={`/batches/${encodeURIComponent(id)}`}>{batch.name}</Link>
                <Button
                  kind="quiet"
                  aria-label={t('compare.takeOutOf', { name: batch.name })}
                  onPress={() => go(ids.filter((one) => one !== id))}
                >
                  {t('compare.takeOut')}
                </Button>
              </li>
            )
          )
        })}
      </ul>
      {ids.length >= mostCompared ? (
        <p className={styles.quiet}>{t('compare.most', { count: mostCompared })}</p>
      ) : (
        <ChoiceField
          label={t('compare.add')}
          value=""
          placeholder={t('compare.choose')}
          onChange={(id) => go([...ids, id])}
          choices={others.map(({ batch }) => ({ value: batch.id, label: batch.name }))}
          isRequired={false}
        />
      )}
    </div>
  )
}
