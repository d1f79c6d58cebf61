/** One label close up, as large as there is room: what is being written is read here. */
import type { DrawnLabels, LabelSheet } from '../../../shared/schemas/labels.ts'
import { useWords } from '../../app/words/use-words.ts'
import { Drawing } from './drawing.tsx'
import styles from './labels.module.css'

export interface LabelPictureProps {
  drawn: DrawnLabels
  sheet: LabelSheet
  names: readonly string[]
  labelIndex: number
}

export function LabelPicture({ drawn, sheet, names, labelIndex }: LabelPictureProps) {
  const t = useWords()
  const { labelWidthMm: width, labelHeightMm: height } = sheet
  return (
    <svg
      className={styles.closeUp}
      style={{ '--ratio': width / height }}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={t('labels.preview.closeUp', { name: names[labelIndex] ?? '' })}
    >
      <rect width={width} height={height} fill="#ffffff" />
      <Drawing ops={drawn.drawings[labelIndex] ?? []} glyphs={drawn.glyphs} />
    </svg>
  )
}
