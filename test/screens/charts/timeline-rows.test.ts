import { describe, expect, it } from 'vitest'
import { shareOfDomain, timelineOf } from '../../../renderer/charts/timeline-rows.ts'
import type { JarSpan } from '../../../shared/schemas/cellar.ts'
import { contents } from '../cellar-fixture.ts'

const span = (jarId: string, from: string, to: string, isOpen = false): JarSpan => ({
  jarId,
  batchId: 'damson',
  stage: 'steeping',
  from: `2026-${from}T08:00:00Z`,
  to: `2026-${to}T08:00:00Z`,
  isOpen,
  contents: contents({ jarId }),
})

const now = Date.parse('2026-11-25T08:00:00Z')

describe('timelineOf', () => {
  it('gives a row to each vessel, in the order of first use', () => {
    const { rows } = timelineOf(
      [
        span('carboy', '10-01', '11-25', true),
        span('north', '09-01', '10-01'),
        span('carboy', '09-20', '09-25'),
      ],
      now,
    )
    expect(rows.map(({ jarId, bars }) => [jarId, bars.length])).toEqual([
      ['north', 1],
      ['carboy', 2],
    ])
  })

  it('reaches from the first filling to the last', () => {
    const { domain } = timelineOf([span('north', '09-01', '10-01')], now)
    expect(new Date(domain.fromMs).toISOString()).toBe('2026-09-01T08:00:00.000Z')
    expect(new Date(domain.toMs).toISOString()).toBe('2026-10-01T08:00:00.000Z')
  })
})

describe('shareOfDomain', () => {
  it('stays within the domain', () => {
    const domain = { fromMs: 100, toMs: 200 }
    expect([50, 100, 150, 300].map((atMs) => shareOfDomain(domain, atMs))).toEqual([0, 0, 0.5, 1])
  })
})
