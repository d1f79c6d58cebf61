/** Where bottles stand: how warm and light it is there, how many stand there, counting them. */
import { useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { useRead } from '../../../app/queries.ts'
import { useSettings } from '../../../app/settings.tsx'
import { Button, ButtonLink } from '../../../parts/button/button.tsx'
import { ReadState } from '../../../parts/failure/read-state.tsx'
import { Empty, Section } from '../../../parts/page/page.tsx'
import { Quantity } from '../../../parts/quantity/quantity.tsx'
import { Table } from '../../../parts/table/table.tsx'
import type { Shelf, ShelfLot } from '../../../../shared/schemas/shelf.ts'
import { PlaceDialog, type PlaceWanted } from './place-dialog.tsx'
import styles from './places-view.module.css'

interface Row {
  /** Absent for bottles that have no place. */
  readonly shelf: Shelf | undefined
  readonly bottles: number
}

export function PlacesView({ lots }: { lots: readonly ShelfLot[] }) {
  const t = useWords()
  const shelves = useRead('shelves.list', {})
  const [wanted, setWanted] = useState<PlaceWanted>()
  const add = (
    <Button
      kind={shelves.data?.length === 0 ? 'primary' : 'plain'}
      onPress={() => setWanted('new')}
    >
      {t('shelf.places.add')}
    </Button>
  )
  const countOn = (shelfId: string | null) =>
    lots.reduce(
      (sum, { lot }) => sum + (lot.places.find((place) => place.shelfId === shelfId)?.count ?? 0),
      0,
    )
  return (
    <Section title={t('shelf.places.title')} actions={(shelves.data?.length ?? 0) > 0 && add}>
      <p>{t('shelf.places.lead')}</p>
      <ReadState query={shelves}>
        {(all) =>
          all.length === 0 ? (
            <Empty action={add}>{t('shelf.places.none')}</Empty>
          ) : (
            <PlacesTable all={all} countOn={countOn} onChange={setWanted} />
          )
        }
      </ReadState>
      <PlaceDialog
        wanted={wanted}
        all={shelves.data ?? []}
        isInUse={(shelfId) => countOn(shelfId) > 0}
        onClose={() => setWanted(undefined)}
      />
    </Section>
  )
}

interface PlacesTableProps {
  all: readonly Shelf[]
  countOn: (shelfId: string | null) => number
  onChange: (shelf: Shelf) => void
}

function PlacesTable({ all, countOn, onChange }: PlacesTableProps) {
  const t = useWords()
  const { locale } = useSettings()
  const [showsRetired, setShowsRetired] = useState(false)
  const shown = all
    .filter(({ isRetired }) => !isRetired || showsRetired)
    .toSorted((a, b) => a.name.localeCompare(b.name, locale, { numeric: true }))
  const withoutPlace = countOn(null)
  const rows: Row[] = [
    ...shown.map((shelf) => ({ shelf, bottles: countOn(shelf.id) })),
    ...(withoutPlace > 0 ? [{ shelf: undefined, bottles: withoutPlace }] : []),
  ]
  return (
    <>
      <Table<Row>
        caption={t('shelf.places.list')}
        rows={rows}
        rowKey={({ shelf }) => shelf?.id ?? ''}
        columns={[
          {
            key: 'name',
            header: t('shelf.places.columns.name'),
            isRowHeader: true,
            cell: ({ shelf }) =>
              shelf ? (
                <>
                  <span className={styles.name}>{shelf.name}</span>{' '}
                  {shelf.isRetired && (
                    <span className={styles.quiet}>{t('shelf.places.retired')}</span>
                  )}
                </>
              ) : (
                t('shelf.places.withoutPlace')
              ),
          },
          {
            key: 'temperature',
            header: t('shelf.places.columns.temperature'),
            align: 'end',
            cell: ({ shelf }) =>
              shelf && <Quantity value={shelf.temperatureC} dimension="temperature" />,
          },
          {
            key: 'light',
            header: t('shelf.places.columns.light'),
            cell: ({ shelf }) => shelf && t(`shelf.light.${shelf.light}`),
          },
          {
            key: 'bottles',
            header: t('shelf.places.columns.bottles'),
            align: 'end',
            cell: ({ bottles }) => bottles,
          },
          {
            key: 'actions',
            header: <span className="visually-hidden">{t('shelf.places.columns.actions')}</span>,
            align: 'end',
            cell: ({ shelf }) => (
              <span className={styles.actions}>
                <ButtonLink
                  href={
                    shelf ? `/shelf/stocktake/${encodeURIComponent(shelf.id)}` : '/shelf/stocktake'
                  }
                >
                  {t('shelf.places.count')}
                  <span className="visually-hidden">
                    {': '}
                    {shelf?.name ?? t('shelf.places.withoutPlace')}
                  </span>
                </ButtonLink>
                {shelf && (
                  <Button
                    kind="quiet"
                    aria-label={t('shelf.places.changeOf', { name: shelf.name })}
                    onPress={() => onChange(shelf)}
                  >
                    {t('shelf.places.change')}
                  </Button>
                )}
              </span>
            ),
          },
        ]}
      />
      {all.some(({ isRetired }) => isRetired) && !showsRetired && (
        <p>
          <Button kind="quiet" onPress={() => setShowsRetired(true)}>
            {t('shelf.places.showRetired')}
          </Button>
        </p>
      )}
    </>
  )
}
