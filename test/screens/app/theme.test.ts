// @vitest-environment node
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

const tokens = readFileSync(
  new URL('../../../renderer/app/theme/tokens.css', import.meta.url),
  'utf8',
)

type Scheme = 'light' | 'dark'

function colour(name: string, scheme: Scheme): string {
  const found = new RegExp(`--${name}: light-dark\\((#[0-9a-f]{6}), (#[0-9a-f]{6})\\)`).exec(tokens)
  const hex = found?.[scheme === 'light' ? 1 : 2]
  if (!hex) throw new Error(`no opaque pair for --${name}`)
  return hex
}

function luminance(hex: string): number {
  const [r = 0, g = 0, b = 0] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4))
  return 0.2126 * r + 0.7152 * g + 0.0722 * b
}

function contrast(a: string, b: string): number {
  const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x)
  return (high + 0.05) / (low + 0.05)
}

const surfaces = ['paper', 'sheet', 'well', 'warning-wash']
const schemes: Scheme[] = ['light', 'dark']

describe.each(schemes)('the %s theme', (scheme) => {
  it.each(['ink', 'ink-quiet', 'action', 'strength', 'sugar', 'warning'])(
    'has --%s readable (4.5 : 1) on every surface',
    (name) => {
      for (const surface of surfaces)
        expect(
          contrast(colour(name, scheme), colour(surface, scheme)),
          surface,
        ).toBeGreaterThanOrEqual(4.5)
    },
  )

  it('has words on the action readable, also while pressed', () => {
    for (const fill of ['action', 'action-pressed'])
      expect(contrast(colour('on-action', scheme), colour(fill, scheme))).toBeGreaterThanOrEqual(
        4.5,
      )
  })

  it('has frames, glass and the focus seen (3 : 1) on paper and sheet', () => {
    for (const line of ['rule-strong', 'glass-line', 'focus'])
      for (const surface of ['paper', 'sheet'])
        expect(
          contrast(colour(line, scheme), colour(surface, scheme)),
          line,
        ).toBeGreaterThanOrEqual(3)
  })
})
