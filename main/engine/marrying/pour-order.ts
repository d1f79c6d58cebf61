/**
 * In which order do the parts of a blend mix by themselves?
 *
 * Dry sugar and acid first, with water on them to dissolve in; then the lightest liquid and each
 * heavier one after it, which sinks through what is there and stirs it on its way. Common practice,
 * no source. In: parts with density and kind. Out: the same in order of pouring.
 */
import type { PartKind } from './blend-part.ts'

interface Pourable {
  readonly kind: PartKind
  readonly densityKgPerM3: number
}

export const inPouringOrder = <P extends Pourable>(parts: readonly P[]): P[] => {
  const needsWater = parts.some(({ kind }) => isDry(kind))
  const rank = ({ kind }: P) => {
    if (isDry(kind)) return 0
    return kind === 'water' && needsWater ? 1 : 2
  }
  return [...parts].sort((a, b) => rank(a) - rank(b) || a.densityKgPerM3 - b.densityKgPerM3)
}

const isDry = (kind: PartKind) => kind === 'sweetener' || kind === 'acid'
