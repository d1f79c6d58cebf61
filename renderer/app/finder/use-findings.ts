/** Everything the finder can lead to: screens and their views, tools, and what stands in the cellar. */
import { useMemo } from 'react'
import { useBatches, useFruitName, useFruits, useJars } from '../../parts/names/use-names.ts'
import { useTimes } from '../../parts/time/use-times.ts'
import { tools } from '../../screens/bench/tools.ts'
import { chapterPath, chapters } from '../../screens/handbook/chapters.ts'
import { seasonViews, viewPath as seasonPath } from '../../screens/season/views.ts'
import { shelfViews, viewPath as shelfPath } from '../../screens/shelf/views.ts'
import { useRead } from '../queries.ts'
import { screens } from '../screens.ts'
import { useWords } from '../words/use-words.ts'
import type { Finding } from './rank-findings.ts'

export function useFindings(actions: readonly Finding[]): readonly Finding[] {
  const places = usePlaces()
  const batches = useBatchFindings()
  const jars = useJarFindings()
  const lots = useLotFindings()
  const drafts = useDraftFindings()
  const fruits = useFruitFindings()
  return useMemo(
    () => [...places, ...actions, ...batches, ...jars, ...lots, ...drafts, ...fruits],
    [places, actions, batches, jars, lots, drafts, fruits],
  )
}

function usePlaces(): readonly Finding[] {
  const t = useWords()
  return useMemo(() => {
    const screen = (path: string, name: string, also?: string): Finding => ({
      id: path,
      kind: 'screen',
      name,
      also,
      path,
    })
    const { shelf, season, bench, marry } = {
      shelf: t('shell.screens.shelf'),
      season: t('shell.screens.season'),
      bench: t('shell.screens.bench'),
      marry: t('shell.screens.marry'),
    }
    return [
      ...screens.map(({ path, name }) => screen(path, t(`shell.screens.${name}`))),
      ...shelfViews.slice(1).map((view) => screen(shelfPath(view), t(`shelf.view.${view}`), shelf)),
      screen('/shelf/stocktake', t('finder.stocktake'), shelf),
      screen('/labels', t('finder.labels'), shelf),
      screen('/moves', t('moves.title'), t('shell.screens.safekeeping')),
      screen('/bring-in', t('sheets.title'), shelf),
      screen('/marry/mend', t('finder.mend'), marry),
      screen('/handbook', t('handbook.title')),
      ...chapters
        .slice(1)
        .map((chapter) =>
          screen(chapterPath(chapter), t(`handbook.chapter.${chapter}`), t('handbook.title')),
        ),
      ...seasonViews
        .slice(1)
        .map((view) => screen(seasonPath(view), t(`season.view.${view}`), season)),
      ...tools.map(({ id }) => screen(`/bench/${id}`, t(`bench.tool.${id}.name`), bench)),
    ]
  }, [t])
}

function useBatchFindings(): readonly Finding[] {
  const batches = useBatches()
  const t = useWords()
  return useMemo(
    () =>
      [...batches.values()].map(({ batch, stage }) => ({
        id: `batch:${batch.id}`,
        kind: 'batch',
        name: batch.name,
        also: t(`codes.stage.${stage}`),
        path: `/batches/${encodeURIComponent(batch.id)}`,
      })),
    [batches, t],
  )
}

/** A jar leads to the batch that stands in it. */
function useJarFindings(): readonly Finding[] {
  const jars = useJars()
  const batches = useBatches()
  return useMemo(
    () =>
      [...jars.values()]
        .filter(({ jar }) => !jar.isRetired)
        .map(({ jar, contents }) => ({
          id: `jar:${jar.id}`,
          kind: 'jar',
          name: jar.name,
          also: contents && batches.get(contents.batchId)?.batch.name,
          path: contents ? `/batches/${encodeURIComponent(contents.batchId)}` : '/cellar-room',
        })),
    [jars, batches],
  )
}

function useLotFindings(): readonly Finding[] {
  const { data } = useRead('shelf.lots', { withGone: false })
  const times = useTimes()
  return useMemo(() => {
    return (data?.lots ?? []).map(({ lot }) => ({
      id: `lot:${lot.id}`,
      kind: 'lot',
      name: lot.name,
      also: times.day(lot.bottledAt),
      path: `/shelf/${encodeURIComponent(lot.id)}`,
    }))
  }, [data, times])
}

function useDraftFindings(): readonly Finding[] {
  const { data } = useRead('drafts.list', {})
  return useMemo(
    () =>
      (data ?? []).map(({ draft }) => ({
        id: `draft:${draft.id}`,
        kind: 'draft',
        name: draft.name,
        path: `/draft/${encodeURIComponent(draft.id)}`,
      })),
    [data],
  )
}

function useFruitFindings(): readonly Finding[] {
  const fruits = useFruits()
  const nameOf = useFruitName()
  return useMemo(
    () =>
      [...fruits.values()].map((fruit) => ({
        id: `fruit:${fruit.id}`,
        kind: 'fruit',
        name: nameOf(fruit),
        also: [fruit.latin, fruit.nameEn, fruit.namePl].join(' · '),
        path: `/fruits/${encodeURIComponent(fruit.id)}`,
      })),
    [fruits, nameOf],
  )
}
