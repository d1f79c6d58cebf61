/** The present time, renewed each minute: a window may stay open for weeks. */
import { useSyncExternalStore } from 'react'

const msPerMinute = 60_000

let now = new Date()
const listeners = new Set<() => void>()
let timer: ReturnType<typeof setInterval> | undefined

function tick() {
  now = new Date()
  for (const listener of listeners) listener()
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener)
  timer ??= setInterval(tick, msPerMinute)
  return () => {
    listeners.delete(listener)
    if (listeners.size > 0) return
    clearInterval(timer)
    timer = undefined
  }
}

function snapshot(): Date {
  // While nobody listened the clock stood still; a minute more or less is not worth a redraw.
  if (Math.abs(Date.now() - now.getTime()) >= msPerMinute) now = new Date()
  return now
}

export const useNow = (): Date => useSyncExternalStore(subscribe, snapshot)
