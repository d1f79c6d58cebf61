/**
 * Where the places and streams of a lineage stand: columns from left to right by their distance
 * from the start, as thick as what passed through, ordered so that streams cross little.
 */
import { massOf, type Matter } from '../../shared/matter.ts'
import type { Lineage, LineageNode } from '../../shared/schemas/shelf.ts'

/** What the thickness of a stream tells. */
export const lineageAmounts = ['mass', 'ethanolG', 'sugarG'] as const
export type LineageAmount = (typeof lineageAmounts)[number]

export const amountOf = (matter: Matter, amount: LineageAmount): number =>
  amount === 'mass' ? massOf(matter) : matter[amount]

export interface PlacedNode {
  readonly node: LineageNode
  readonly amountG: number
  readonly column: number
  /** From the top of the picture; the bar of matter stands inside the box of the words. */
  readonly topPx: number
  readonly heightPx: number
  readonly barTopPx: number
  readonly barPx: number
}

export interface PlacedStream {
  readonly from: string
  readonly to: string
  readonly amountG: number
  readonly thickPx: number
  readonly fromPx: number
  readonly toPx: number
}

export interface LineageLayout {
  readonly columns: number
  readonly heightPx: number
  readonly nodes: readonly PlacedNode[]
  readonly streams: readonly PlacedStream[]
}

/** Words of a place need this, two lines and an amount; what is thicker is drawn thicker. */
const boxRem = 3.2
const gapPx = 10
/** The tallest column's matter, so that a solera of forty years still fits a screen or two. */
const tallestPx = 420
const thinnestPx = 1
/** Less than a tenth of a gram is what clings to a funnel. */
const traceG = 0.1
const sweeps = 4

/** `remPx` is the size of the words: pixels to a rem. */
export function lineageLayout(
  lineage: Lineage,
  amount: LineageAmount,
  remPx: number,
): LineageLayout {
  const boxPx = boxRem * remPx
  const links = lineage.links
    .map(({ from, to, matter }) => ({ from, to, amountG: amountOf(matter, amount) }))
    .filter(({ amountG }) => amountG >= traceG)
  const touched = new Set(links.flatMap(({ from, to }) => [from, to]))
  const nodes = lineage.nodes.filter(
    ({ key, matter }) => touched.has(key) || amountOf(matter, amount) >= traceG,
  )
  const depths = [...new Set(nodes.map(({ depth }) => depth))].sort((a, b) => a - b)
  const columns = inOrder(
    depths.map((depth) => nodes.filter((node) => node.depth === depth)),
    links,
  )
  const through = (key: string) => throughOf(key, links, nodes, amount)
  const thickest = Math.max(
    1e-9,
    ...columns.map((column) => column.reduce((sum, { key }) => sum + through(key), 0)),
  )
  const perG = tallestPx / thickest
  const placed = columns.flatMap((column, index) => {
    let top = 0
    return column.map((node): PlacedNode => {
      const amountG = through(node.key)
      const barPx = Math.max(thinnestPx, amountG * perG)
      const heightPx = Math.max(boxPx, barPx)
      const at = { topPx: top, heightPx, barTopPx: top + (heightPx - barPx) / 2, barPx }
      top += heightPx + gapPx
      return { node, amountG, column: index, ...at }
    })
  })
  const heightPx = Math.max(boxPx, ...placed.map((one) => one.topPx + one.heightPx))
  const middled = placed.map((one) => {
    const own = placed.filter(({ column }) => column === one.column)
    const used = Math.max(...own.map((other) => other.topPx + other.heightPx))
    const down = (heightPx - used) / 2
    return { ...one, topPx: one.topPx + down, barTopPx: one.barTopPx + down }
  })
  return {
    columns: columns.length,
    heightPx,
    nodes: middled,
    streams: streamsOf(links, middled, perG),
  }
}

interface Link {
  readonly from: string
  readonly to: string
  readonly amountG: number
}

/** What came in, or went out, whichever is more; a place may keep some, or be the start. */
function throughOf(
  key: string,
  links: readonly Link[],
  nodes: readonly LineageNode[],
  amount: LineageAmount,
): number {
  const sum = (side: 'from' | 'to') =>
    links.reduce((all, link) => all + (link[side] === key ? link.amountG : 0), 0)
  const own = nodes.find((node) => node.key === key)
  return Math.max(sum('from'), sum('to'), own ? amountOf(own.matter, amount) : 0)
}

/** Each column by where its streams come from, then by where they go, a few times over. */
function inOrder(columns: readonly LineageNode[][], links: readonly Link[]): LineageNode[][] {
  const ordered = columns.map((column) =>
    column.toSorted((a, b) => (a.at ?? '').localeCompare(b.at ?? '') || a.key.localeCompare(b.key)),
  )
  for (let sweep = 0; sweep < sweeps; sweep += 1) {
    const isForward = sweep % 2 === 0
    const place = new Map<string, number>()
    const order = isForward ? ordered.keys() : [...ordered.keys()].toReversed()
    for (const index of order) {
      const column = ordered[index] ?? []
      const sorted = column
        .map((node, at) => ({
          node,
          by: middleOf(node.key, links, place, isForward) ?? share(at, column.length),
        }))
        .toSorted((a, b) => a.by - b.by)
        .map(({ node }) => node)
      ordered[index] = sorted
      sorted.forEach((node, at) => place.set(node.key, share(at, sorted.length)))
    }
  }
  return ordered
}

const share = (at: number, count: number) => (at + 0.5) / count

/** The middle of its neighbours that stand already, each with its weight. */
function middleOf(
  key: string,
  links: readonly Link[],
  place: ReadonlyMap<string, number>,
  isForward: boolean,
): number | undefined {
  let [sum, weight] = [0, 0]
  for (const link of links) {
    const [own, other] = isForward ? [link.to, link.from] : [link.from, link.to]
    const at = own === key ? place.get(other) : undefined
    if (at === undefined) continue
    sum += at * link.amountG
    weight += link.amountG
  }
  return weight === 0 ? undefined : sum / weight
}

/** Streams leave and enter a place one under the other, in the order of the other ends. */
function streamsOf(
  links: readonly Link[],
  placed: readonly PlacedNode[],
  perG: number,
): PlacedStream[] {
  const byKey = new Map(placed.map((one) => [one.node.key, one]))
  const known = links.filter(({ from, to }) => byKey.has(from) && byKey.has(to))
  const topOf = (key: string) => byKey.get(key)?.topPx ?? 0
  const offsets = (side: 'from' | 'to') => {
    const other = side === 'from' ? 'to' : 'from'
    const next = new Map<string, number>()
    const at = new Map<Link, number>()
    for (const link of known.toSorted((a, b) => topOf(a[other]) - topOf(b[other]))) {
      const used = next.get(link[side]) ?? 0
      at.set(link, (byKey.get(link[side])?.barTopPx ?? 0) + used)
      next.set(link[side], used + link.amountG * perG)
    }
    return at
  }
  const [leaving, entering] = [offsets('from'), offsets('to')]
  return known.map((link) => ({
    ...link,
    thickPx: Math.max(thinnestPx, link.amountG * perG),
    fromPx: leaving.get(link) ?? 0,
    toPx: entering.get(link) ?? 0,
  }))
}
