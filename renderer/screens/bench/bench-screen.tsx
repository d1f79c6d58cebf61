/** The Bench: one instrument at a time, answering as its numbers are written. */
import { useState } from 'react'
import { useWords } from '../../app/words/use-words.ts'
import { Page } from '../../parts/page/page.tsx'
import { startOf, type Entries } from './entries.ts'
import { ToolBench } from './tool-bench.tsx'
import { ToolChoice, ToolList } from './tool-list.tsx'
import { toolOf, type ToolId } from './tools.ts'
import styles from './bench-screen.module.css'

export function BenchScreen({ toolId }: { toolId?: string | undefined }) {
  const t = useWords()
  const tool = toolOf(toolId)
  // What was written into one instrument is still there after a look at another.
  const [kept, setKept] = useState<Partial<Record<ToolId, Entries>>>({})
  const entries = kept[tool.id] ?? startOf(tool)
  return (
    <Page title={t('bench.title')} lead={t('bench.lead')}>
      <div className={styles.bench}>
        <ToolList current={tool.id} />
        <ToolChoice current={tool.id} />
        <ToolBench
          key={tool.id}
          tool={tool}
          entries={entries}
          onChange={(changed) => setKept({ ...kept, [tool.id]: { ...entries, ...changed } })}
        />
      </div>
    </Page>
  )
}
