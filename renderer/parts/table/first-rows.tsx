/** So many rows at first, and as many more at a press: the book of a lifetime is not drawn at once. */
import { useState, type ReactNode } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../button/button.tsx'

export interface FirstRowsProps<Row> {
  rows: readonly Row[]
  atOnce: number
  children: (shown: readonly Row[]) => ReactNode
}

export function FirstRows<Row>({ rows, atOnce, children }: FirstRowsProps<Row>) {
  const t = useWords()
  const [most, setMost] = useState(atOnce)
  return (
    <>
      {children(rows.slice(0, most))}
      {rows.length > most && (
        <div>
          <Button onPress={() => setMost(most + atOnce)}>
            {t('parts.showMore', { count: Math.min(atOnce, rows.length - most) })}
          </Button>
        </div>
      )}
    </>
  )
}
