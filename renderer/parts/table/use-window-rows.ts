/**
 * Which rows of a long list are in sight of a window that scrolls as a whole. Rows are of one
 * height, given in the root's own measure; the list above and below them is empty room.
 */
import { useLayoutEffect, useRef, useState, type RefObject } from 'react'
import { defaultRangeExtractor, useWindowVirtualizer } from '@tanstack/react-virtual'
import { rootPx } from '../root-px.ts'

export interface WindowRows<Element extends HTMLElement> {
  /** Put on what holds the rows. */
  readonly ref: RefObject<Element | null>
  /** Rows to draw, each with the empty room above it. */
  readonly rows: readonly { readonly index: number; readonly roomPx: number }[]
  readonly rowPx: number
  /** Empty room below the last of them. */
  readonly belowPx: number
  scrollTo: (index: number) => void
}

export function useWindowRows<Element extends HTMLElement>(
  count: number,
  rowRem: number,
  /** Stays in the list while out of sight, so that the focus is not lost; -1 for none. */
  kept = -1,
): WindowRows<Element> {
  const ref = useRef<Element>(null)
  const [rowPx] = useState(() => rowRem * rootPx())
  const [top, setTop] = useState(0)
  // What stands above the list grows and shrinks: it is looked at after every drawing.
  // oxlint-disable-next-line react-hooks/exhaustive-deps -- it settles: the same top is not set again
  useLayoutEffect(() => {
    const now = ref.current ? ref.current.getBoundingClientRect().top + window.scrollY : 0
    if (Math.abs(now - top) >= 1) setTop(now)
  })
  // oxlint-disable-next-line react/incompatible-library -- nothing of it is handed to a memo
  const virtualizer = useWindowVirtualizer({
    count,
    estimateSize: () => rowPx,
    overscan: 8,
    scrollMargin: top,
    rangeExtractor: (range) => {
      const seen = defaultRangeExtractor(range)
      return kept < 0 || kept >= count || seen.includes(kept)
        ? seen
        : [...seen, kept].sort((a, b) => a - b)
    },
  })
  const indexes = virtualizer.getVirtualItems().map(({ index }) => index)
  const last = indexes.at(-1) ?? -1
  return {
    ref,
    rows: indexes.map((index, at) => ({
      index,
      roomPx: (index - (indexes[at - 1] ?? -1) - 1) * rowPx,
    })),
    rowPx,
    belowPx: Math.max(0, count - 1 - last) * rowPx,
    scrollTo: (index) => virtualizer.scrollToIndex(index, { align: 'auto' }),
  }
}
