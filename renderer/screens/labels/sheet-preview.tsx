/** One sheet as it will be printed, drawn from the very list that the PDF is made of. */
import { memo, useId, useState } from 'react'
import type { DrawnLabels, LabelSheet } from '../../../shared/schemas/labels.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Button } from '../../parts/button/button.tsx'
import { Drawing } from './drawing.tsx'
import styles from './labels.module.css'

export interface SheetPreviewProps {
  drawn: DrawnLabels
  sheet: LabelSheet
  /** By label. */
  names: readonly string[]
}

export function SheetPreview({ drawn, sheet, names }: SheetPreviewProps) {
  const t = useWords()
  const [wanted, setPage] = useState(0)
  const pages = drawn.pages.length
  const page = Math.min(wanted, pages - 1)
  return (
    <div className={styles.preview}>
      <SheetPicture drawn={drawn} sheet={sheet} names={names} page={page} />
      {pages > 1 && (
        <div className={styles.pager}>
          <Button isDisabled={page === 0} onPress={() => setPage(page - 1)}>
            {t('labels.preview.previous')}
          </Button>
          <span aria-live="polite">{t('labels.preview.page', { page: page + 1, pages })}</span>
          <Button isDisabled={page === pages - 1} onPress={() => setPage(page + 1)}>
            {t('labels.preview.next')}
          </Button>
        </div>
      )}
    </div>
  )
}

interface SheetPictureProps extends SheetPreviewProps {
  page: number
}

const SheetPicture = memo(function SheetPicture({ drawn, sheet, names, page }: SheetPictureProps) {
  const t = useWords()
  const id = useId()
  const placements = drawn.pages[page]?.placements ?? []
  const used = [...new Set(placements.map(({ labelIndex }) => labelIndex))]
  const { pageWidthMm: width, pageHeightMm: height, labelWidthMm, labelHeightMm } = sheet
  return (
    <svg
      className={styles.paper}
      style={{ '--ratio': width / height }}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={t('labels.preview.picture', {
        page: page + 1,
        pages: drawn.pages.length,
        names: used.map((index) => names[index] ?? '').join(', '),
      })}
    >
      <defs>
        {used.map((index) => (
          <g key={index} id={`${id}${index}`}>
            <Drawing ops={drawn.drawings[index] ?? []} glyphs={drawn.glyphs} />
          </g>
        ))}
      </defs>
      <rect width={width} height={height} fill="#ffffff" />
      {placements.map(({ labelIndex, xMm, yMm }) => (
        <g key={`${xMm} ${yMm}`}>
          <rect
            className={styles.edge}
            x={xMm}
            y={yMm}
            width={labelWidthMm}
            height={labelHeightMm}
          />
          <use href={`#${id}${labelIndex}`} x={xMm} y={yMm} />
        </g>
      ))}
      {drawn.cutMarks && <path d={drawn.cutMarks} fill="none" stroke="#8a8a8a" strokeWidth={0.1} />}
    </svg>
  )
})
