/** Panels one above the other that share a time axis: where each stands, from the top of the plot. */
import type { CurveQuantity } from './curve-quantities.ts'

export interface Panel {
  readonly quantity: CurveQuantity
  readonly topPx: number
  readonly heightPx: number
}

export interface PanelStack {
  readonly panels: readonly Panel[]
  readonly heightPx: number
}

/** Names of the stages stand above the first panel, the name of a quantity above its own. */
const stagePx = 24
const titlePx = 30
const main: ReadonlySet<CurveQuantity> = new Set(['strengthPctVol', 'sugarGPerL'])

export function stackPanels(shown: readonly CurveQuantity[]): PanelStack {
  const panels: Panel[] = []
  let topPx = stagePx
  for (const quantity of shown) {
    const heightPx = heightOf(quantity, shown)
    panels.push({ quantity, topPx: topPx + titlePx, heightPx })
    topPx += titlePx + heightPx
  }
  return { panels, heightPx: topPx + 6 }
}

function heightOf(quantity: CurveQuantity, shown: readonly CurveQuantity[]): number {
  if (shown.length === 1) return 300
  if (!main.has(quantity)) return 104
  return shown.length === 2 ? 190 : 160
}
