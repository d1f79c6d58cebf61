/**
 * What the calls so far have shown: ids, moves, drafts, sheets. A value drawn from here makes a call
 * reach further than one made up, which would end at "there is no such jar".
 */

/** So many of each name, the newest. */
const keptOfAName = 60
/** A forecast has thousands of numbers; what names things stands near its beginning. */
const mostLookedAt = 3000

export interface KnownValues {
  /** Takes up what a request or an answer names. */
  learn: (area: string, value: unknown) => void
  /** The batch that was last told to be in a jar. */
  batchIn: (jarId: unknown) => unknown
  /** One of the values that had this name; undefined while there is none. */
  pick: (name: string, choice: number, fits?: (value: unknown) => boolean) => unknown
}

export function knownValues(): KnownValues {
  const byName = new Map<string, unknown[]>()
  const batchByJar = new Map<unknown, unknown>()

  function keep(name: string, value: unknown) {
    const kept = byName.get(name) ?? []
    byName.set(name, kept)
    if (typeof value === 'string' && kept.includes(value)) return
    kept.push(value)
    if (kept.length > keptOfAName) kept.shift()
  }

  function comesHome({ jarId, batchId }: { jarId: unknown; batchId: unknown }) {
    if (!onPaper.test(String(batchId))) batchByJar.set(jarId, batchId)
  }

  return {
    learn: (area, value) => {
      let left = mostLookedAt
      const look = (name: string, found: unknown) => {
        left -= 1
        if (left < 0 || found === null || found === undefined) return
        if (typeof found === 'string') {
          if (isTelling(name) && !onPaper.test(found)) keep(name, found)
        } else if (Array.isArray(found)) {
          for (const each of found) look(oneOf(name), each)
        } else if (typeof found === 'object') {
          keep(name, found)
          if ('jarId' in found && 'batchId' in found) comesHome(found)
          for (const [key, each] of Object.entries(found)) look(nameIn(name, key), each)
        }
      }
      look(oneOf(area), value)
    },
    batchIn: (jarId) => batchByJar.get(jarId),
    pick: (name, choice, fits = () => true) => {
      const fitting = (byName.get(name) ?? []).filter(fits)
      return fitting[choice % fitting.length]
    },
  }
}

const kindsOfId = [
  'batch',
  'bottleLot',
  'lot',
  'jar',
  'move',
  'group',
  'draft',
  'recipe',
  'fruit',
  'kind',
  'shelf',
  'sheet',
  'opened',
  'job',
  'task',
] as const

/** `fromJarId`, `toJarId` and `jarId` name the same things. */
export function idName(name: string): string | undefined {
  const plain = name.replace(/Ids$/, 'Id')
  const kind = kindsOfId.find((each) =>
    new RegExp(`(^|[a-z])${each}Id$`, 'i').test(plain.replace(/^lotIdOf/, '')),
  )
  return kind === 'kind' ? 'fruitId' : kind && `${kind}Id`
}

/** Maps, since a cellar of hostile texts has things called `constructor`. */
const ownersOfId: ReadonlyMap<string, string> = new Map(
  Object.entries({
    jar: 'jarId',
    batch: 'batchId',
    pantry: 'lotId',
    bottle: 'bottleLotId',
    lot: 'bottleLotId',
    shelf: 'shelfId',
    shelve: 'shelfId',
    recipe: 'recipeId',
    draft: 'draftId',
    fruit: 'fruitId',
    sheet: 'sheetId',
    recorded: 'moveId',
    task: 'taskId',
  }),
)

/** What a property is called when it stands by itself: an `id` is that of the thing it belongs to. */
export const nameIn = (owner: string, key: string): string =>
  key === 'id' ? (ownersOfId.get(owner) ?? 'id') : (idName(key) ?? key)

/** `batches` holds what is called `batch`. */
export const oneOf = (name: string): string =>
  pluralsOfTheirOwn.get(name) ??
  (name.endsWith('Id') ? name : name.replace(/(?<=ch|sh)es$|(?<=[^s])s$/, ''))

const pluralsOfTheirOwn: ReadonlyMap<string, string> = new Map([
  ['own', 'sheet'],
  ['usual', 'sheet'],
])

/** What a draft calls its batch, jars and lots: no book has them. */
const onPaper = /^draft(-|$)/

const isTelling = (name: string) => /(Id|^id|^at|^key|^name|At|secret)$/.test(name)
