// @vitest-environment node
import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import {
  compareDashes,
  compareInk,
  compareMarkers,
  mostCompared,
} from '../../../renderer/charts/compare-ink.ts'
import { crossingInk } from '../../../renderer/charts/crossing-ink.ts'
import { changedDash, curveInk, forecastDash } from '../../../renderer/charts/curve-quantities.ts'
import { quantityInk } from '../../../renderer/parts/quantity/quantity-mark.tsx'
import { batchColours } from '../../../renderer/screens/batches/batch-colours.ts'

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

type Three = readonly [number, number, number]

/** Red, green and blue as amounts of light, 0 to 1. */
const lightOf = (hex: string): Three => {
  const part = (at: number) => {
    const share = Number.parseInt(hex.slice(at, at + 2), 16) / 255
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
  }
  return [part(1), part(3), part(5)]
}

const luminanceOf = ([r, g, b]: Three): number => 0.2126 * r + 0.7152 * g + 0.0722 * b

const times = (matrix: readonly Three[], [x, y, z]: Three): Three => {
  const [a, b, c] = matrix.map(([p, q, r]) => p * x + q * y + r * z)
  return [a ?? Number.NaN, b ?? Number.NaN, c ?? Number.NaN]
}

const each = (three: Three, change: (value: number) => number): Three => [
  change(three[0]),
  change(three[1]),
  change(three[2]),
]

/** Oklab of light, by the matrices of CSS Color 4, section 9.3. */
const coneOfLight: readonly Three[] = [
  [0.412221469470763, 0.5363325372617348, 0.0514459932675022],
  [0.2119034958178252, 0.6806995506452344, 0.1073969535369406],
  [0.0883024591900564, 0.2817188391361215, 0.6299787016738222],
]
const oklabOfCone: readonly Three[] = [
  [0.210454268309314, 0.7936177747023054, -0.0040720430116193],
  [1.9779985324311684, -2.4285922420485799, 0.450593709617411],
  [0.0259040424655478, 0.7827717124575296, -0.8086757549230774],
]
const coneOfOklab: readonly Three[] = [
  [1, 0.3963377773761749, 0.2158037573099136],
  [1, -0.1055613458156586, -0.0638541728258133],
  [1, -0.0894841775298119, -1.2914855480194092],
]
const lightOfCone: readonly Three[] = [
  [4.0767416360759583, -3.3077115392580629, 0.2309699031821043],
  [-1.2684379732850315, 2.6097573492876882, -0.341319376002657],
  [-0.0041960761386756, -0.7034186179359362, 1.7076146940746117],
]
const oklabOf = (light: Three): Three =>
  times(oklabOfCone, each(times(coneOfLight, light), Math.cbrt))
const lightOfOklab = (oklab: Three): Three =>
  times(
    lightOfCone,
    each(times(coneOfOklab, oklab), (cone) => cone ** 3),
  )

/** `color-mix(in oklab, one share, other)`. */
const mixed = (one: string, share: number, other: string): Three => {
  const [a, b] = [oklabOf(lightOf(one)), oklabOf(lightOf(other))]
  const between = (at: 0 | 1 | 2) => a[at] * share + b[at] * (1 - share)
  return lightOfOklab([between(0), between(1), between(2)])
}

/**
 * What is seen with one kind of cone missing: Machado, Oliveira and Fernandes, "A physiologically-based
 * model for simulation of color vision deficiency", IEEE TVCG 15 (2009), severity 1.0, on linear light.
 */
const deficiencies: Readonly<Record<string, readonly Three[]>> = {
  none: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
}

/** How far apart two colours look, as a distance in Oklab. */
const difference = (a: string, b: string, deficiency: readonly Three[]): number => {
  const seen = (hex: string) =>
    oklabOf(each(times(deficiency, lightOf(hex)), (part) => Math.min(1, Math.max(0, part))))
  const [one, other] = [seen(a), seen(b)]
  return Math.hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2])
}

/**
 * CSS Color 4 takes 0.02 for a difference that can just be seen, side by side and at leisure; lines
 * are thin and stand apart, so they have to differ five times as much.
 */
const toldApart = 0.1

function contrast(a: string, b: string): number {
  return contrastOfLight(lightOf(a), lightOf(b))
}

function contrastOfLight(a: Three, b: Three): number {
  const [high = 0, low = 0] = [luminanceOf(a), luminanceOf(b)].sort((x, y) => y - x)
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

  it('has frames, glass and the focus seen (3 : 1) on every surface', () => {
    for (const line of ['rule-strong', 'glass-line', 'focus'])
      for (const surface of surfaces)
        expect(
          contrast(colour(line, scheme), colour(surface, scheme)),
          line,
        ).toBeGreaterThanOrEqual(3)
  })

  it('has the line of any batch seen (3 : 1) where batches are compared', () => {
    for (const [name, liquid] of Object.entries(batchColours))
      for (const surface of ['paper', 'sheet'])
        expect(
          contrastOfLight(
            mixed(liquid, compareInk[scheme], colour('ink', scheme)),
            lightOf(colour(surface, scheme)),
          ),
          `${name} on ${surface}`,
        ).toBeGreaterThanOrEqual(3)
  })

  it.each(Object.entries(deficiencies))(
    'has each two lines of a chart told apart by colour, or by dash as well: %s',
    (_, deficiency) => {
      const alike = [curveInk, crossingInk]
        .flatMap((inks) => pairsOf<{ color: string; dash: string }>(Object.values(inks)))
        .filter(([one, other]) => one.dash === other.dash)
        .map(([one, other]) => [one.color, other.color] as const)
      for (const [one, other] of alike)
        expect(
          difference(colourOf(one, scheme), colourOf(other, scheme), deficiency),
          `${one} and ${other}`,
        ).toBeGreaterThanOrEqual(toldApart)
      const { strength, sugar } = quantityInk
      expect(
        difference(colourOf(strength.color, scheme), colourOf(sugar.color, scheme), deficiency),
      ).toBeGreaterThanOrEqual(toldApart)
    },
  )
})

describe('the lines of charts', () => {
  it('have a second sign beside their colour: a dash, and for batches a marker', () => {
    expect(quantityInk.strength.dash).not.toBe(quantityInk.sugar.dash)
    expect(crossingInk.density.dash).not.toBe(crossingInk.refraction.dash)
    for (const signs of [compareDashes, compareMarkers])
      expect(new Set(signs).size).toBe(mostCompared)
  })

  it('have dashes of no measured quantity for what is forecast, or handled otherwise', () => {
    const measured = Object.values(curveInk).map(({ dash }) => dash)
    expect(new Set([...measured, forecastDash, changedDash]).size).toBe(new Set(measured).size + 2)
  })
})

describe('the sight without one kind of cone', () => {
  it.each(Object.entries(deficiencies))('leaves white and black as they are: %s', (_, matrix) => {
    for (const hex of ['#ffffff', '#000000'])
      for (const [index, part] of times(matrix, lightOf(hex)).entries())
        expect(part).toBeCloseTo(lightOf(hex)[index] ?? Number.NaN, 5)
  })

  it('makes red and green alike without the cones for them', () => {
    const [red, green] = ['#d03030', '#707000']
    const apart = (name: string) => difference(red, green, deficiencies[name] ?? [])
    expect(apart('none')).toBeGreaterThan(0.15)
    expect(apart('deuteranopia')).toBeLessThan(apart('none') / 2)
  })
})

const colourOf = (variable: string, scheme: Scheme): string =>
  colour(variable.replace(/^var\(--(.*)\)$/, '$1'), scheme)

const pairsOf = <Item>(items: readonly Item[]): (readonly [Item, Item])[] =>
  items.flatMap((one, index) => items.slice(index + 1).map((other) => [one, other] as const))
