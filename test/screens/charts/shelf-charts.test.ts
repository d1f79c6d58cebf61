import { describe, expect, it } from 'vitest'
import { ageingDomain, ageingGroups, ageingRows } from '../../../renderer/charts/ageing-rows.ts'
import { colourRows } from '../../../renderer/charts/colour-rows.ts'
import { lineageLayout } from '../../../renderer/charts/lineage-layout.ts'
import { stockRows, stockTicks } from '../../../renderer/charts/stock-rows.ts'
import { tasteDomain, tastePanels, type TastedLot } from '../../../renderer/charts/taste-rows.ts'
import { massOf, matterOf } from '../../../shared/matter.ts'
import type { Lineage } from '../../../shared/schemas/shelf.ts'
import { kindStock, lineage, shelfLots, shelfPage, taste } from '../shelf/shelf-fixture.ts'

const nowMs = Date.parse('2026-11-25T12:00:00Z')
const year = 365.25 * 86_400_000

describe('ageing rows', () => {
  const groups = ageingGroups(shelfLots().lots, (kindId) => kindId, 'en-GB')

  it('stand kind by kind, what fades first at the head of each', () => {
    expect(groups.map(({ kindId }) => kindId)).toEqual(['damson', 'other', 'raspberry'])
    expect(groups[0]?.bars.map(({ name }) => name)).toEqual(['Damson 2021', 'Damson 2025'])
    expect(ageingRows(groups)).toHaveLength(7)
  })

  it('span all bars, or some years with today a third in', () => {
    const bars = groups.flatMap((group) => group.bars)
    const all = ageingDomain(bars, 'all', nowMs, 0)
    for (const bar of bars) {
      expect(bar.bottledMs).toBeGreaterThanOrEqual(all.fromMs)
      expect(bar.fading.lateMs).toBeLessThanOrEqual(all.toMs)
    }
    const three = ageingDomain(bars, 'three', nowMs, 0)
    expect(three.toMs - three.fromMs).toBeCloseTo(3 * year, 0)
    expect(nowMs - three.fromMs).toBeCloseTo(year, 0)
    expect(ageingDomain(bars, 'three', nowMs, 1).fromMs - three.fromMs).toBeCloseTo(year, 0)
  })
})

describe('stock rows', () => {
  const rows = stockRows(kindStock(), nowMs)

  it('meet at now, so that neither line breaks', () => {
    const now = rows.find(({ atMs }) => atMs === nowMs)
    expect(now).toEqual({ atMs: nowMs, past: 3500, forecast: 3500, band: [3500, 3500] })
    expect(rows.filter(({ atMs }) => atMs < nowMs).every((row) => row.forecast === undefined)).toBe(
      true,
    )
    expect(rows.filter(({ atMs }) => atMs > nowMs).every((row) => row.past === undefined)).toBe(
      true,
    )
  })

  it('are held by their scale, band and all', () => {
    const greatest = Math.max(...rows.flatMap(({ past = 0, band = [0, 0] }) => [past, ...band]))
    expect(stockTicks(rows).at(-1)).toBeGreaterThanOrEqual(greatest)
  })
})

describe('colour rows', () => {
  it('begin the forecast where the past ends', () => {
    const rows = colourRows(shelfPage().colour, nowMs)
    const both = rows.filter(({ past, forecast }) => past !== undefined && forecast !== undefined)
    expect(both).toHaveLength(1)
    expect(both[0]?.atMs).toBeLessThanOrEqual(nowMs)
  })
})

describe('taste panels', () => {
  const lot = (lotId: string, bottledAt: string, at: readonly string[]): TastedLot => ({
    lotId,
    name: lotId,
    bottledMs: Date.parse(bottledAt),
    colour: '#123456',
    tastings: at.map((instant, index) =>
      taste({ at: instant, scores: { aroma: index, ...(index === 0 && { heat: 5 }) } }),
    ),
  })
  const two = [
    lot('a', '2020-01-01T00:00:00Z', ['2022-01-01T00:00:00Z', '2021-01-01T00:00:00Z']),
    lot('b', '2024-01-01T00:00:00Z', ['2025-01-01T00:00:00Z']),
  ]

  it('are of judged axes only, each lot in the order of time', () => {
    const panels = tastePanels(two, 'date')
    expect(panels.map(({ axis }) => axis)).toEqual(['aroma', 'heat'])
    expect(panels[0]?.series[0]?.map(({ score }) => score)).toEqual([1, 0])
  })

  it('put lots of different years side by side by their age', () => {
    const [aroma] = tastePanels(two, 'age')
    const [a, b] = aroma?.series ?? []
    expect(((a?.[0]?.xMs ?? 0) - (b?.[0]?.xMs ?? 0)) / 86_400_000).toBeCloseTo(0, 0)
  })

  it('have room for one mark alone', () => {
    const { fromMs, toMs } = tasteDomain(tastePanels([two[1] as TastedLot], 'date'))
    expect(toMs - fromMs).toBeGreaterThan(year / 3)
  })
})

describe('lineageLayout', () => {
  it('stands each depth in a column, none over another', () => {
    const { columns, nodes, heightPx } = lineageLayout(lineage, 'mass', 16)
    expect(columns).toBe(4)
    const overlaps = nodes.flatMap((one) =>
      nodes.filter(
        (other) =>
          other !== one &&
          other.column === one.column &&
          one.topPx < other.topPx + other.heightPx &&
          other.topPx < one.topPx + one.heightPx,
      ),
    )
    expect(overlaps).toEqual([])
    for (const { topPx, heightPx: own } of nodes) {
      expect(topPx).toBeGreaterThanOrEqual(0)
      expect(topPx + own).toBeLessThanOrEqual(heightPx + 1e-9)
    }
  })

  it('gives words their room, more of it where they are larger', () => {
    for (const remPx of [16, 20, 32]) {
      const least = Math.min(...lineageLayout(lineage, 'mass', remPx).nodes.map((n) => n.heightPx))
      // Two lines of a name at 0.9375 rem, an amount at 0.8125 rem, by their line heights.
      expect(least).toBeGreaterThanOrEqual((2 * 0.9375 * 1.1 + 0.8125 * 1.2) * remPx)
    }
  })

  it('draws streams as thick as what passed, within the bars they join', () => {
    const { streams, nodes } = lineageLayout(lineage, 'mass', 16)
    const barOf = (key: string) => nodes.find(({ node }) => node.key === key)
    for (const stream of streams) {
      const link = lineage.links.find(({ from, to }) => from === stream.from && to === stream.to)
      expect(stream.amountG).toBeCloseTo(massOf(link?.matter ?? matterOf({})))
      const [from, to] = [barOf(stream.from), barOf(stream.to)]
      expect(stream.fromPx + stream.thickPx).toBeLessThanOrEqual(
        (from?.barTopPx ?? 0) + (from?.barPx ?? 0) + 1e-6,
      )
      expect(stream.toPx + stream.thickPx).toBeLessThanOrEqual(
        (to?.barTopPx ?? 0) + (to?.barPx ?? 0) + 1e-6,
      )
    }
    const [thick, thin] = [streams[0], streams[1]]
    expect((thick?.thickPx ?? 0) / (thin?.thickPx ?? 1)).toBeCloseTo(600 / 250)
  })

  it('leaves out what holds none of the matter asked for', () => {
    const { nodes } = lineageLayout(lineage, 'sugarG', 16)
    const keys = nodes.map(({ node }) => node.key)
    expect(keys).toContain('lot:sugar')
    expect(keys).not.toContain('lot:spirit')
  })

  it('draws a liquid that was poured back, and two hundred places, without end', () => {
    const node = (key: string, depth: number) => ({
      key,
      kind: 'jar' as const,
      depth,
      matter: matterOf({ waterG: 10 }),
    })
    const link = (from: string, to: string) => ({ from, to, matter: matterOf({ waterG: 5 }) })
    const back: Lineage = {
      nodes: [node('jar:a@x', 0), node('jar:b@x', 1)],
      links: [link('jar:a@x', 'jar:b@x'), link('jar:b@x', 'jar:a@x')],
      origins: [],
      destinations: [],
    }
    expect(lineageLayout(back, 'mass', 16).streams).toHaveLength(2)
    const nodes = Array.from({ length: 200 }, (_, index) => node(`jar:${index}@x`, index % 8))
    const links = nodes.slice(1).map((to, index) => link(nodes[index]?.key ?? '', to.key))
    const many = lineageLayout({ nodes, links, origins: [], destinations: [] }, 'mass', 16)
    expect(many.nodes).toHaveLength(200)
    expect(many.nodes.every(({ topPx }) => Number.isFinite(topPx))).toBe(true)
  })

  it('has nothing to draw of nothing', () => {
    const empty = { nodes: [], links: [], origins: [], destinations: [] }
    expect(lineageLayout(empty, 'mass', 16).nodes).toEqual([])
  })
})
