/** The colours of one label, from its batch's: dark enough to be read, light enough to be printed. */

export interface Inks {
  /** Writing on paper. */
  readonly ink: string
  readonly quiet: string
  readonly rule: string
  /** The batch's colour as it is, for liquid. */
  readonly liquid: string
  /** The batch's colour, dark enough for names on paper and for a ground of light writing. */
  readonly deep: string
  /** Writing on `deep`, and the batch's colour made light enough for it. */
  readonly light: string
  readonly lightAccent: string
}

type Rgb = readonly [number, number, number]

const ink = '#1c2521'
const light = '#fbf8f1'
const paper: Rgb = [255, 255, 255]

/** Contrast that names on paper keep, and that small writing keeps. */
const deepContrast = 5.5
const accentContrast = 4.5

export function inksOf(colour: string): Inks {
  const liquid = rgbOf(colour)
  const deep = towards(liquid, [12, 16, 14], (one) => contrast(one, paper) >= deepContrast)
  const lightAccent = towards(liquid, rgbOf(light), (one) => contrast(one, deep) >= accentContrast)
  return {
    ink,
    quiet: '#515c56',
    rule: '#b3a993',
    liquid: colour.toLowerCase(),
    deep: hexOf(deep),
    light,
    lightAccent: hexOf(lightAccent),
  }
}

const rgbOf = (colour: string): Rgb => {
  const at = (from: number) => Number.parseInt(colour.slice(from, from + 2), 16)
  return [at(1), at(3), at(5)]
}

const hexOf = (rgb: Rgb): string =>
  `#${rgb.map((part) => Math.round(part).toString(16).padStart(2, '0')).join('')}`

/** The first step on the way to another colour that is good enough; that colour if none is. */
function towards(from: Rgb, to: Rgb, isEnough: (colour: Rgb) => boolean): Rgb {
  const mixed = (share: number): Rgb => {
    const part = (index: 0 | 1 | 2) => Math.round(from[index] + (to[index] - from[index]) * share)
    return [part(0), part(1), part(2)]
  }
  for (let step = 0; step < 40; step += 1) {
    const colour = mixed(step / 40)
    if (isEnough(colour)) return colour
  }
  return to
}

/** By WCAG 2: relative luminances, each with 0.05 of stray light. */
function contrast(a: Rgb, b: Rgb): number {
  const [brighter, darker] = [luminance(a), luminance(b)].sort((one, other) => other - one) as [
    number,
    number,
  ]
  return (brighter + 0.05) / (darker + 0.05)
}

function linear(part: number): number {
  const share = part / 255
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
}

function luminance([red, green, blue]: Rgb): number {
  return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue)
}
