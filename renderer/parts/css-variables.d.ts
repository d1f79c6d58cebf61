import 'react'

declare module 'react' {
  interface CSSProperties {
    /** The colour of the batch that a vessel holds. */
    '--liquid'?: string
    /** Width over height of a picture that keeps its shape. */
    '--ratio'?: number
  }
}
