/** Holds what may be wider or higher than its place: where it is, arrow keys scroll it too. */
import { useEffect, useRef, useState, type ReactNode } from 'react'

export interface ScrollBoxProps {
  /** What is in it, for those who listen. */
  label: string
  className: string | undefined
  children: ReactNode
}

const workable = 'a[href], button, input, select, textarea, [tabindex]'

export function ScrollBox({ label, className, children }: ScrollBoxProps) {
  const ref = useRef<HTMLDivElement>(null)
  const [isStop, setStop] = useState(false)
  // After each drawing: what is in it may have been taken for something else.
  useEffect(() => {
    const box = ref.current
    if (!box) return
    const look = () => {
      // What can be worked in it is scrolled to by Tab: only without it the box need be measured.
      setStop(
        box.querySelector(workable) === null &&
          (box.scrollWidth > box.clientWidth || box.scrollHeight > box.clientHeight),
      )
    }
    look()
    window.addEventListener('resize', look)
    return () => window.removeEventListener('resize', look)
  })
  return (
    <div
      ref={ref}
      className={className}
      {...(isStop && { tabIndex: 0, role: 'group', 'aria-label': label })}
    >
      {children}
    </div>
  )
}
