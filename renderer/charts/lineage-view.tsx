/** A lineage as a picture or a table, with its ends beside it. */
import { useState } from 'react'
import { useWords } from '../app/words/use-words.ts'
import type { Lineage, LineageNode } from '../../shared/schemas/shelf.ts'
import { Button } from '../parts/button/button.tsx'
import { Segments } from '../parts/fields/segments.tsx'
import { useBatches } from '../parts/names/use-names.ts'
import { Section } from '../parts/page/page.tsx'
import { LineageEnds } from './lineage-ends.tsx'
import { lineageAmounts, type LineageAmount } from './lineage-layout.ts'
import { LineagePicture } from './lineage-picture.tsx'
import { LineageTable } from './lineage-table.tsx'
import { useLineageNames } from './use-lineage-names.ts'

export interface LineageViewProps {
  lineage: Lineage
  title: string
  /** Which end is told: back to the purchases, or forward to where it is now. */
  towards: 'origins' | 'destinations'
}

export function LineageView({ lineage, title, towards }: LineageViewProps) {
  const t = useWords()
  const nameOf = useLineageNames()
  const batches = useBatches()
  const [isTable, setTable] = useState(false)
  const [amount, setAmount] = useState<LineageAmount>('mass')
  const ends = lineage[towards]
  // Of a purchase followed forward, what stands in the pantry is what is left of it.
  const endName = (node: LineageNode) =>
    towards === 'destinations' && node.kind === 'lot' ? t('shelf.lineage.left') : nameOf(node)
  return (
    <>
      <Section
        title={title}
        term="lineage"
        actions={
          <Button kind="quiet" onPress={() => setTable(!isTable)}>
            {t(isTable ? 'shelf.lineage.asChart' : 'shelf.lineage.asTable')}
          </Button>
        }
      >
        {lineage.links.length === 0 ? (
          <p>{t('shelf.lineage.none')}</p>
        ) : isTable ? (
          <LineageTable lineage={lineage} nameOf={nameOf} />
        ) : (
          <>
            <Segments
              label={t('shelf.lineage.show')}
              isLabelHidden
              value={amount}
              onChange={setAmount}
              choices={lineageAmounts.map((value) => ({
                value,
                label: t(`shelf.lineage.amounts.${value}`),
              }))}
            />
            <LineagePicture
              lineage={lineage}
              amount={amount}
              nameOf={nameOf}
              colourOf={(batchId) => batches.get(batchId)?.batch.colour}
            />
          </>
        )}
      </Section>
      {ends.length > 0 && (
        <Section title={t(`shelf.lineage.${towards}Title`)}>
          <LineageEnds
            ends={ends}
            nodes={lineage.nodes}
            nameOf={endName}
            caption={t(`shelf.lineage.${towards}Caption`)}
            header={t(towards === 'origins' ? 'shelf.lineage.origin' : 'shelf.lineage.destination')}
          />
        </Section>
      )}
    </>
  )
}
