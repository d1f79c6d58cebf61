/** Labels for bottles: which lots, how they look, on which sheet; what is seen is what is printed. */
import type { ReactNode } from 'react'
import { useSearch } from 'wouter'
import type { Answer } from '../../../shared/channels.ts'
import { useRead } from '../../app/queries.ts'
import { useWords } from '../../app/words/use-words.ts'
import { ButtonLink } from '../../parts/button/button.tsx'
import { ReadState } from '../../parts/failure/read-state.tsx'
import { Empty, Page } from '../../parts/page/page.tsx'
import { lotsInLink } from './label-job.ts'
import { LabelsEditor } from './labels-editor.tsx'

export interface LabelsScreenProps {
  /** What follows the path's question mark, where the link was a plain one. */
  query: string | undefined
}

export function LabelsScreen({ query }: LabelsScreenProps) {
  const bottles = useRead('bottles.list', {})
  const style = useRead('labels.style', {})
  // Links that the router follows itself leave the question before the fragment.
  const search = useSearch()
  const named = lotsInLink(query ?? search)
  if (bottles.isPending || bottles.isError || style.isPending || style.isError)
    return (
      <Frame>
        <ReadState query={bottles}>
          {() => <ReadState query={style}>{() => null}</ReadState>}
        </ReadState>
      </Frame>
    )
  return <Ready key={named.join()} bottles={bottles.data} style={style.data} named={named} />
}

interface ReadyProps {
  bottles: Answer<'bottles.list'>
  style: Answer<'labels.style'>
  named: readonly string[]
}

function Ready({ bottles, style, named }: ReadyProps) {
  const t = useWords()
  if (bottles.length === 0)
    return (
      <Frame>
        <Empty action={<ButtonLink href="/batches">{t('labels.toBatches')}</ButtonLink>}>
          {t('labels.empty')}
        </Empty>
      </Frame>
    )
  const known = named.filter((id) => bottles.some((lot) => lot.id === id))
  return (
    <LabelsEditor
      bottles={bottles}
      style={style}
      named={known}
      isLotMissing={known.length < named.length}
    />
  )
}

function Frame({ children }: { children: ReactNode }) {
  const t = useWords()
  return <Page title={t('labels.title')}>{children}</Page>
}
