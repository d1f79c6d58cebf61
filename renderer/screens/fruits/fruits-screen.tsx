/** The fruit library as this cellar keeps it: what there is, when it is to be had, whose it is. */
import { useState } from 'react'
import type { Fruit, FruitOrigin } from '../../../shared/schemas/fruits.ts'
import { useRead } from '../../app/queries.ts'
import { useSettings } from '../../app/settings.tsx'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { ReadState } from '../../parts/failure/read-state.tsx'
import { useFruitName } from '../../parts/names/use-names.ts'
import { Empty, Page } from '../../parts/page/page.tsx'
import { useNow } from '../../parts/time/use-now.ts'
import { AddFruitDialog } from './add-fruit-dialog.tsx'
import { FruitFilter } from './fruit-filter.tsx'
import { FruitTable } from './fruit-table.tsx'
import { isInGroup, listOfFruits, type FruitGroup, type ListedFruit } from './list-of-fruits.ts'
import { useKindWords } from './use-kind-words.ts'

export function FruitsScreen() {
  const t = useWords()
  const fruits = useRead('fruits.list', {})
  const origins = useRead('fruits.origins', {})
  const month = useNow().getMonth() + 1
  const [isAdding, setAdding] = useState(false)
  const listed = useListed(fruits.data ?? [], origins.data ?? [])
  const waiting = [fruits, origins].find(({ isError }) => isError) ?? fruits
  const isHere = fruits.data !== undefined && origins.data !== undefined
  return (
    <Page
      title={t('fruits.title')}
      lead={
        isHere &&
        t('fruits.lead', {
          all: listed.length,
          inSeason: listed.filter((one) => isInGroup(one, 'inSeason', month)).length,
        })
      }
      actions={
        isHere && (
          <Button kind="primary" onPress={() => setAdding(true)}>
            {t('fruits.add')}
          </Button>
        )
      }
    >
      {isHere ? (
        <FilteredFruits all={listed} month={month} />
      ) : (
        <ReadState<unknown> query={waiting}>{() => null}</ReadState>
      )}
      <AddFruitDialog isOpen={isAdding} onClose={() => setAdding(false)} />
    </Page>
  )
}

function useListed(
  fruits: readonly Fruit[],
  origins: readonly { fruitId: string; origin: FruitOrigin }[],
): ListedFruit[] {
  const { locale } = useSettings()
  const fruitName = useFruitName()
  const kindWords = useKindWords()
  const originById = new Map(origins.map(({ fruitId, origin }) => [fruitId, origin]))
  return fruits
    .map((fruit) => ({
      fruit,
      origin: originById.get(fruit.id) ?? ('library' as const),
      name: fruitName(fruit),
      kind: kindWords(fruit.kind),
    }))
    .toSorted((a, b) => a.name.localeCompare(b.name, locale))
}

function FilteredFruits({ all, month }: { all: readonly ListedFruit[]; month: number }) {
  const t = useWords()
  const [group, setGroup] = useState<FruitGroup>('all')
  const [search, setSearch] = useState('')
  const shown = listOfFruits(all, { group, search, month })
  const isFiltered = search.trim() !== ''
  return (
    <>
      <FruitFilter
        all={all}
        month={month}
        group={group}
        onGroup={setGroup}
        search={search}
        onSearch={setSearch}
        shown={shown.length}
      />
      {shown.length === 0 ? (
        <Empty
          action={
            <Button
              onPress={() => {
                setGroup('all')
                setSearch('')
              }}
            >
              {t('fruits.showAll')}
            </Button>
          }
        >
          {isFiltered || group === 'all'
            ? t('fruits.noMatch')
            : t(group === 'yours' ? 'fruits.noneYours' : 'fruits.noneInSeason')}
        </Empty>
      ) : (
        <FruitTable fruits={shown} month={month} />
      )}
    </>
  )
}
