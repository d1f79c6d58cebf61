/** Where the window was when it was last closed, if that is still a place one can see. */
import { readFileSync, writeFileSync } from 'node:fs'
import * as z from 'zod'

const Bounds = z.strictObject({
  x: z.number().int(),
  y: z.number().int(),
  width: z.number().int().min(200).max(20_000),
  height: z.number().int().min(200).max(20_000),
})
export type Bounds = z.infer<typeof Bounds>

const WindowState = z.strictObject({ bounds: Bounds, isMaximised: z.boolean() })
export type WindowState = z.infer<typeof WindowState>

/** Undefined when nothing usable was kept; the window then opens at its first size. */
export function readWindowState(file: string, screens: readonly Bounds[]): WindowState | undefined {
  try {
    const state = WindowState.parse(JSON.parse(readFileSync(file, 'utf8')))
    return screens.some((screen) => isInReach(state.bounds, screen)) ? state : undefined
  } catch {
    return undefined
  }
}

export function writeWindowState(file: string, state: WindowState): void {
  try {
    writeFileSync(file, JSON.stringify(state))
  } catch {
    // A window that opens at its first size is no reason to hold up the end.
  }
}

/** Enough of the title bar is on the screen to take hold of it. */
function isInReach(bounds: Bounds, screen: Bounds): boolean {
  const shownWidth =
    Math.min(bounds.x + bounds.width, screen.x + screen.width) - Math.max(bounds.x, screen.x)
  const isTopShown = bounds.y >= screen.y && bounds.y <= screen.y + screen.height - 50
  return shownWidth >= 100 && isTopShown
}
