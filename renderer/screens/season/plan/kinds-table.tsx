/** Each kind: what is wanted and why, what the plan lays down with its band, what is short and why. */
import { useSettings } from '../../../app/settings.tsx'
import { useWords } from '../../../app/words/use-words.ts'
import { listFormat } from '../../../parts/formatters/formatters.ts'
import { useFruitColour } from '../../../parts/names/use-fruit-colour.ts'
import { useKindName } from '../../../parts/names/use-kind-name.ts'
import { Quantity } from '../../../parts/quantity/quantity.tsx'
import { useQuantities } from '../../../parts/quantity/use-quantities.ts'
import { Table } from '../../../parts/table/table.tsx'
import type { SeasonKind, SeasonPlan } from '../../../../shared/schemas/season.ts'
import { leastMl } from '../rounding.ts'
import { useKindWords } from '../use-kind-words.ts'
import styles from './plan.module.css'

const isAsked = ({ wantedMl, plannedMl, atMostMl }: SeasonKind) =>
  wantedMl > 0 || plannedMl.value > 0 || atMostMl !== undefined

export function KindsTable({ plan }: { plan: SeasonPlan }) {
  const t = useWords()
  const { locale } = useSettings()
  const { text, size } = useQuantities()
  const kindName = useKindName()
  const colourOf = useFruitColour()
  const words = useKindWords()
  const greatest = Math.max(
    1,
    ...plan.kinds.flatMap(({ wantedMl, plannedMl }) => [wantedMl, plannedMl.high]),
  )
  const asked = plan.kinds.filter(isAsked).toSorted((a, b) => b.wantedMl - a.wantedMl)
  const others = plan.kinds.filter((kind) => !isAsked(kind))
  const limits = ({ cutBy }: SeasonKind) =>
    listFormat(locale, { type: 'conjunction' }).format(
      cutBy.map((limit) => t(`season.limit.${limit}`)),
    )
  return (
    <>
      {asked.length > 0 && (
        <Table<SeasonKind>
          caption={t('season.kinds.caption')}
          rows={asked}
          rowKey={({ kindId }) => kindId}
          columns={[
            {
              key: 'kind',
              header: t('season.kinds.kind'),
              isRowHeader: true,
              cell: (kind) => (
                <>
                  <span className={styles.kind} style={{ '--liquid': colourOf(kind.kindId) }}>
                    <span className={styles.swatch} aria-hidden />
                    {kindName(kind.kindId)}
                  </span>
                  <span className={styles.why}>{words.asks(kind)}</span>
                </>
              ),
            },
            {
              key: 'chart',
              header: t('season.kinds.chart'),
              isMinor: true,
              cell: (kind) => (
                <KindBar kind={kind} greatest={greatest} colour={colourOf(kind.kindId)} />
              ),
            },
            {
              key: 'wanted',
              header: t('season.kinds.wanted'),
              align: 'end',
              cell: ({ wantedMl, atMostMl }) => (
                <>
                  <Quantity value={wantedMl} dimension="volume" />
                  {atMostMl !== undefined && (
                    <span className={styles.small}>
                      {t('season.kinds.atMost', { volume: text(atMostMl, 'volume') })}
                    </span>
                  )}
                </>
              ),
            },
            {
              key: 'planned',
              header: t('season.kinds.planned'),
              align: 'end',
              cell: ({ plannedMl: { value, low, high } }) => (
                <>
                  <Quantity value={value} dimension="volume" />
                  {value > 0 && (
                    <span className={styles.range}>
                      {t('season.span', { from: text(low, 'volume'), to: text(high, 'volume') })}
                    </span>
                  )}
                </>
              ),
            },
            {
              key: 'bottles',
              header: t('season.kinds.bottles'),
              align: 'end',
              cell: ({ bottles, bottleSizeMl }) => (
                <>
                  {bottles}
                  <span className={styles.range}>
                    {t('season.kinds.each', { size: size(bottleSizeMl, 'volume').text })}
                  </span>
                </>
              ),
            },
            {
              key: 'short',
              header: t('season.kinds.short'),
              cell: (kind) =>
                kind.shortMl < leastMl ? (
                  t('season.kinds.noShort')
                ) : (
                  <>
                    <span className={styles.short}>{text(kind.shortMl, 'volume')}</span>
                    <span className={styles.small}>{limits(kind)}</span>
                  </>
                ),
            },
          ]}
        />
      )}
      {asked.some(({ plannedMl }) => plannedMl.value > 0) && (
        <p className={styles.small}>{t('season.kinds.key')}</p>
      )}
      {others.length > 0 && (
        <p className={styles.quiet}>
          {t('season.kinds.notAsked', {
            kinds: listFormat(locale, { type: 'conjunction' }).format(
              others.map(({ kindId }) => kindName(kindId)),
            ),
          })}
        </p>
      )}
    </>
  )
}

interface KindBarProps {
  kind: SeasonKind
  greatest: number
  colour: string
}

/** The same numbers stand beside it. */
function KindBar({ kind: { wantedMl, plannedMl }, greatest, colour }: KindBarProps) {
  const share = (volumeMl: number) => `${(100 * volumeMl) / greatest}%`
  const { value, low, high } = plannedMl
  return (
    <span className={styles.bar} style={{ '--liquid': colour }} aria-hidden>
      {value > 0 && <span className={styles.planned} style={{ width: share(value) }} />}
      {wantedMl > 0 && <span className={styles.wanted} style={{ width: share(wantedMl) }} />}
      {value > 0 && (
        <span
          className={styles.whisker}
          style={{ left: share(low), width: `calc(${share(high)} - ${share(low)})` }}
        />
      )}
    </span>
  )
}
