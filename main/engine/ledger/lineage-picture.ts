/** Passages of followed matter drawn together: places as nodes, all between two of them as one link. */
import { addMatter, massOf, noMatter, type Matter } from '../../../shared/matter.ts'
import type { LineageFound, LineageLink, LineagePlace } from './lineage-found.ts'
import { isOutside, isPurchase, type Hop } from './matter-hops.ts'

/** What is followed of a hop's matter. */
export interface Passage {
  readonly hop: Hop
  readonly matter: Matter
}

/** Less than this is rounding, in grams: no line is drawn for it. */
const traceG = 1e-6

interface Node {
  matter: Matter
  depth: number
  atMs: number | undefined
  /** Its depth stands once matter went on from it: what goes round must not push it ahead forever. */
  hasPassedOn: boolean
}

/** From passages in the order of time. */
export function pictureOf(passages: readonly Passage[]): Pick<LineageFound, 'nodes' | 'links'> {
  const nodes = new Map<string, Node>()
  const links = new Map<string, LineageLink>()
  const nodeOf = (key: string): Node => {
    const known = nodes.get(key)
    if (known) return known
    const node = { matter: noMatter, depth: 0, atMs: undefined, hasPassedOn: false }
    nodes.set(key, node)
    return node
  }
  for (const { hop, matter } of passages) {
    if (massOf(matter) <= traceG) continue
    const into = nodeOf(hop.to)
    into.matter = addMatter(into.matter, matter)
    into.atMs ??= hop.atMs
    if (isPurchase(hop)) continue
    const source = nodeOf(hop.from)
    source.hasPassedOn = true
    if (isOutside(hop.from)) source.matter = addMatter(source.matter, matter)
    if (!into.hasPassedOn) into.depth = Math.max(into.depth, source.depth + 1)
    const between = `${hop.from}\n${hop.to}`
    const sum = addMatter(links.get(between)?.matter ?? noMatter, matter)
    links.set(between, { from: hop.from, to: hop.to, matter: sum })
  }
  return {
    nodes: [...nodes].map(([key, node]) => placeOf(key, node)),
    links: [...links.values()],
  }
}

const kinds = ['lot', 'jar', 'bottles', 'opened', 'outside'] as const

function placeOf(key: string, { matter, depth, atMs }: Node): LineagePlace {
  const kind = kinds.find((name) => key.startsWith(`${name}:`)) ?? 'outside'
  const [id = '', batchId] = key.slice(kind.length + 1).split('@')
  return {
    key,
    kind,
    depth,
    matter,
    ...(kind !== 'outside' && { id }),
    ...(batchId !== undefined && { batchId }),
    ...(atMs !== undefined && { atMs }),
  }
}
