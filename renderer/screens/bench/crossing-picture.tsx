/** The two-instrument answer as crossing lines, or as the table of the same points. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import type { BenchPicture, BenchResult } from '../../../shared/schemas/bench.ts'
import { CrossingLines } from '../../charts/crossing-lines.tsx'
import { CrossingTable } from '../../charts/crossing-table.tsx'
import { Button } from '../../parts/button/button.tsx'
import { useMeasuredText } from './use-measured-text.ts'

export interface CrossingPictureProps {
  picture: Extract<BenchPicture, { kind: 'crossing' }>
  results: readonly BenchResult[]
}

export function CrossingPicture({ picture, results }: CrossingPictureProps) {
  const t = useWords()
  const { text } = useMeasuredText()
  const [isTable, setTable] = useState(false)
  const valueOf = (quantity: BenchResult['quantity']) =>
    results.find((result) => result.quantity === quantity)?.value ?? 0
  const strengthPctVol = valueOf('strength')
  const sugarGPerL = valueOf('sugar')
  const { density, refraction } = picture
  return (
    <div>
      {isTable ? (
        <CrossingTable density={density} refraction={refraction} />
      ) : (
        <CrossingLines
          density={density}
          refraction={refraction}
          strengthPctVol={strengthPctVol}
          sugarGPerL={sugarGPerL}
          description={t('bench.crossing.description', {
            strength: text(strengthPctVol, 'strength'),
            sugar: text(sugarGPerL, 'sugar'),
          })}
        />
      )}
      <Button kind="quiet" onPress={() => setTable(!isTable)}>
        {t(isTable ? 'bench.crossing.asChart' : 'bench.crossing.asTable')}
      </Button>
    </div>
  )
}
