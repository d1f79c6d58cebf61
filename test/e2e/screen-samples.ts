/** Each route as `renderer/app/routes.tsx` writes it, and addresses in the demo that it leads to. */
import { readFileSync } from 'node:fs'
import { lookIntoPath } from '../../main/hosts/file-to-open.ts'
import type { HostProcess } from './host-process.ts'
import type { DraftSpec, DraftWishes } from '../../shared/schemas/drafts.ts'
import { shelfViews, viewPath as shelfPath } from '../../renderer/screens/shelf/views.ts'
import { seasonViews, viewPath as seasonPath } from '../../renderer/screens/season/views.ts'
import { chapterPath, chapters } from '../../renderer/screens/handbook/chapters.ts'

/** Kept by `readyBook`, since the demo has no draft and no recipe. */
export const draftId = 'plums-of-the-test'
/** Looked into without being there: the screen says so. */
export const absentFile = '/none/there.zip'
export const recipeName = 'Cherries of the test'

export const screenSamples: Readonly<Record<string, readonly string[]>> = {
  '"/"': ['/'],
  '{/^\\/today(?:\\/(?<part>calendar))?$/}': ['/today'],
  '"/batches"': ['/batches'],
  '{/^\\/batches\\/(?<id>[^/]+)(?:\\/do\\/(?<task>[^/]+))?$/}': [
    '/batches/plum-2026',
    '/batches/quince-2026',
    '/batches/sour-cherry-2025',
    '/batches/raspberry-2026/do/raspberry-2026.bottle.1',
  ],
  '"/compare/:ids?"': ['/compare/damson-2022,damson-2024', '/compare'],
  '"/draft"': ['/draft'],
  '"/draft/:id"': [`/draft/${draftId}`],
  '"/marry"': ['/marry'],
  '"/marry/mend/:jarId?"': ['/marry/mend/window'],
  '{/^\\/season(?:\\/(?<view>[^/]+))?$/}': seasonViews.map(seasonPath),
  '"/bench/:tool?"': ['/bench', '/bench/two-instruments', '/bench/glass'],
  '{/^\\/shelf(?:\\/view\\/(?<view>[^/]+))?$/}': shelfViews.map(shelfPath),
  '"/shelf/stocktake/:shelfId?"': ['/shelf/stocktake/rack'],
  '"/shelf/:id"': ['/shelf/sour-cherry-2025-bottles'],
  '"/lineage/lot/:lotId"': ['/lineage/lot/spirit-2026-1'],
  '{/^\\/labels(?:\\?(?<query>.*))?$/}': ['/labels', '/labels?lots=sour-cherry-2025-bottles'],
  '"/cellar-room"': ['/cellar-room'],
  '"/fruits"': ['/fruits'],
  '"/fruits/:id"': ['/fruits/sour_cherry'],
  '"/moves"': ['/moves'],
  '"/bring-in/:kind?"': ['/bring-in', '/bring-in/stock'],
  '"/look-into/:file"': [lookIntoPath(absentFile)],
  '"/safekeeping"': ['/safekeeping'],
  '"/handbook/:chapter?"': chapters.map(chapterPath),
  '': ['/no-such-screen'],
}

/** The routes' paths as they stand in the source; the last route, of what is not found, has none. */
export function writtenRoutes(): string[] {
  const source = readFileSync(new URL('../../renderer/app/routes.tsx', import.meta.url), 'utf8')
  return [...source.matchAll(/<Route(?: path=("[^"]*"|\{\/.*?\/\}))?[\s>]/g)].map(
    ([, path]) => path ?? '',
  )
}

/** Puts into a demo what the samples need and it lacks. */
export async function readyBook(host: HostProcess): Promise<void> {
  const usual = await answer<{ spec: DraftSpec; wishes: DraftWishes }>(host, 'drafts.usual', {
    fruitId: 'plum',
    massG: 2000,
    spiritPctVol: 96,
  })
  await answer(host, 'drafts.keep', { id: draftId, name: 'Plums', note: '', pins: [], ...usual })
  await answer(host, 'recipes.keepBatch', {
    id: 'cherries-of-the-test',
    name: recipeName,
    note: '',
    batchId: 'sour-cherry-2025',
  })
}

export async function answer<Value>(
  host: HostProcess,
  channel: string,
  request: object,
): Promise<Value> {
  const reply = await host.call(channel, request)
  if (!reply.ok) throw new Error(`${channel}: ${reply.error.message}`)
  return reply.value as Value
}
