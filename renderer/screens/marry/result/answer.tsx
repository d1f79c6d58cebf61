/** What the chosen parts come to: the blend, what breaks, how it flows, what to pour. */
import { memo } from 'react'
import type { MarryReply } from '../../../../shared/schemas/marrying.ts'
import { useWords } from '../../../app/words/use-words.ts'
import { Segments } from '../../../parts/fields/segments.tsx'
import { useBatches, useJars } from '../../../parts/names/use-names.ts'
import { Section } from '../../../parts/page/page.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import type { Entries } from '../entries.ts'
import type { Drawn } from '../places.ts'
import { RecordingRow, type RecordingRowProps } from '../record/recording-row.tsx'
import type { Places } from '../use-places.ts'
import { AmountTable } from './amount-table.tsx'
import { BrokenList } from './broken-list.tsx'
import { CostLine } from './figures.tsx'
import { FlowPicture } from './flow-picture.tsx'
import styles from './result.module.css'
import { FillNote, overflows, TargetChoice } from './target-choice.tsx'

export interface AnswerProps extends DetailsProps {
  /** The same answer a little later: its many lines are drawn when there is time. */
  told: MarryReply
}

/** What stands below the figures. */
export function Answer({ reply, told, places, ...rest }: AnswerProps) {
  const { liquid, broken, cost } = reply
  return (
    <div className={styles.answer}>
      {liquid && (
        <>
          <BottlesLine reply={reply} />
          <CostLine cost={cost} volumeMl={liquid.volumeMl} bottleMl={reply.bottles[0]?.sizeMl} />
          <Notes reply={reply} places={places} />
        </>
      )}
      <BrokenList broken={broken} places={places} />
      {liquid && <Details reply={told} places={places} {...rest} />}
    </div>
  )
}

interface DetailsProps {
  reply: MarryReply
  asked: Pick<Entries, 'parts' | 'amount' | 'holds' | 'toJarId'>
  /** Best ones that stay the same, and `asked` as well. */
  onChange: (changed: Partial<Entries>) => void
  places: Places
  onRecorded: RecordingRowProps['onRecorded']
}

const Details = memo(function Details(props: DetailsProps) {
  const { reply, asked, onChange, places, onRecorded } = props
  const t = useWords()
  const { amounts, broken, cost, fill } = reply
  const { parts, amount, holds: held, toJarId } = asked
  const batchIds = batchesOf(amounts, places)
  return (
    <>
      {broken.length > 0 && amount !== 'most' && (
        <Segments
          label={t('marry.answer.broken')}
          isLabelHidden
          value={held}
          onChange={(holds) => onChange({ holds })}
          choices={(['composition', 'volume'] as const).map((value) => ({
            value,
            label: t(`marry.holds.${value}`),
          }))}
        />
      )}
      <Flow reply={reply} toJarId={toJarId} places={places} colourOf={batchIds[0]} />
      <div className={styles.target}>
        <TargetChoice
          parts={parts}
          toJarId={toJarId}
          onChange={(chosen) => onChange({ toJarId: chosen })}
        />
        <RecordingRow
          amounts={amounts}
          toJarId={toJarId}
          batchIds={batchIds}
          mayOpenBatch
          heldBack={
            toJarId === undefined
              ? t('marry.record.needsTarget')
              : overflows(fill)
                ? t('marry.record.overflows')
                : undefined
          }
          onRecorded={onRecorded}
        />
      </div>
      <FillNote fill={fill} />
      <Section title={t('marry.amounts.title')}>
        <AmountTable amounts={amounts} cost={cost} places={places} />
      </Section>
    </>
  )
})

/** Batches of what goes in, the one with most of it first. */
function batchesOf(amounts: MarryReply['amounts'], { byPlace }: Places): string[] {
  const ordered = amounts.toSorted((a, b) => b.volumeMl - a.volumeMl)
  return [...new Set(ordered.flatMap(({ place }) => byPlace.get(place)?.batchId ?? []))]
}

function BottlesLine({ reply: { bottles, restMl } }: { reply: MarryReply }) {
  const t = useWords()
  const { size, text } = useQuantities()
  const filled = bottles.filter(({ count }) => count > 0)
  if (filled.length === 0) return null
  return (
    <p className={styles.facts}>
      {filled.map(({ sizeMl, count }) => (
        <strong key={sizeMl}>
          {t('marry.answer.filled', {
            bottles: t('parts.bottles', { count }),
            size: size(sizeMl, 'volume').text,
          })}
        </strong>
      ))}
      {restMl >= 1 && <span>{t('marry.answer.rest', { rest: text(restMl, 'volume') })}</span>}
    </p>
  )
}

function Notes({ reply, places }: { reply: MarryReply; places: Places }) {
  const t = useWords()
  const { text } = useQuantities()
  const { contractionMl, undissolvedG, cutShort } = reply
  return (
    <p className={styles.facts}>
      {contractionMl >= 1 && (
        <span className={styles.quiet}>
          {t('marry.answer.contraction', { less: text(contractionMl, 'volume') })}
        </span>
      )}
      {undissolvedG >= 1 && (
        <span className={styles.over}>
          {t('marry.answer.undissolved', { sugar: text(undissolvedG, 'mass') })}
        </span>
      )}
      {cutShort.length > 0 && (
        <span className={styles.over}>
          {t('marry.answer.cutShort', {
            places: cutShort.map((place) => places.byPlace.get(place)?.name ?? place).join(', '),
          })}
        </span>
      )}
    </p>
  )
}

interface FlowProps {
  reply: MarryReply
  toJarId: string | undefined
  places: Places
  /** The batch whose colour the blend is drawn in. */
  colourOf: string | undefined
}

function Flow({ reply, toJarId, places, colourOf }: FlowProps) {
  const t = useWords()
  const { text } = useQuantities()
  const jar = useJars().get(toJarId ?? '')?.jar
  const colour = useBatches().get(colourOf ?? '')?.batch.colour ?? 'var(--strength)'
  const volumeMl = reply.liquid?.volumeMl ?? 0
  const target: Drawn | undefined = jar && {
    shape: jar.shape,
    capacityMl: jar.capacityMl,
    fillMl: reply.fill?.fillMl ?? volumeMl,
    liquidMl: volumeMl,
    pulpMl: 0,
    bedMl: 0,
    colour,
  }
  return (
    <FlowPicture
      amounts={reply.amounts}
      places={places}
      target={target}
      targetName={jar?.name ?? t('marry.picture.noTarget', { volume: text(volumeMl, 'volume') })}
    />
  )
}
