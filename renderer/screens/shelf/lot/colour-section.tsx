/** How much of its colour the lot has left: nothing is shown of one that fades little. */
import { useState } from 'react'
import { useWords } from '../../../app/words/use-words.ts'
import { useSettings } from '../../../app/settings.tsx'
import { ColourLines } from '../../../charts/colour-lines.tsx'
import { ColourTable } from '../../../charts/colour-table.tsx'
import { Button } from '../../../parts/button/button.tsx'
import { Section } from '../../../parts/page/page.tsx'
import { formatShare } from '../../../parts/quantity/format-share.ts'
import { useNow } from '../../../parts/time/use-now.ts'
import { useTimes } from '../../../parts/time/use-times.ts'
import type { ShelfPage } from '../../../../shared/schemas/shelf.ts'

interface ColourSectionProps {
  page: ShelfPage
  colour: string | undefined
}

export function ColourSection({ page, colour }: ColourSectionProps) {
  const t = useWords()
  const { locale } = useSettings()
  const times = useTimes()
  const nowMs = useNow().getTime()
  const [isTable, setTable] = useState(false)
  const { colour: points, shelfLot } = page
  const [first, last] = [points[0], points.at(-1)]
  const left = shelfLot.window.colourLeft
  if (!first || !last) return null
  const share = (value: number) => formatShare(value, locale)
  return (
    <Section
      title={t('shelf.lot.colour')}
      actions={
        <Button kind="quiet" onPress={() => setTable(!isTable)}>
          {t(isTable ? 'shelf.asChart' : 'shelf.asTable')}
        </Button>
      }
    >
      {left && (
        <p>
          {t('shelf.lot.colourNow', {
            share: share(left.value),
            low: share(left.low),
            high: share(left.high),
          })}
        </p>
      )}
      {isTable ? (
        <ColourTable points={points} />
      ) : (
        <ColourLines
          points={points}
          nowMs={nowMs}
          colour={colour ?? '#888888'}
          description={t('shelf.lot.colourDescription', {
            from: times.day(first.at),
            to: times.day(last.at),
            shareFrom: share(first.left.value),
            shareTo: share(last.left.value),
            shareNow: left ? share(left.value) : '–',
          })}
        />
      )}
    </Section>
  )
}
