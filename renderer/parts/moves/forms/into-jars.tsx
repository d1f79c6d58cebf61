/** The jars a move goes into: the batch's own, and on request the empty ones. */
import { useWords } from '../../../app/words/use-words.ts'
import type { DraftHead } from '../drafts/draft-basics.ts'
import { emptyJars, ownJars } from '../drafts/log-context.ts'
import { JarPicker } from '../jar-picker.tsx'
import { useProblemWords, type DraftFormProps } from './form-basics.ts'

interface IntoJarsProps extends DraftFormProps<DraftHead> {
  jarIds: readonly string[]
  onChoose: (jarIds: string[]) => void
}

export function IntoJars(props: Omit<IntoJarsProps, 'draft' | 'onChange'>) {
  const { jarIds, onChoose, context, problems, isAmending } = props
  const t = useWords()
  const problemWords = useProblemWords(problems)
  const chosen = context.jars.filter(({ jar }) => jarIds.includes(jar.id))
  const own = ownJars(context)
  const shown = own.length > 0 ? [...new Set([...own, ...chosen])] : emptyJars(context)
  return (
    <JarPicker
      label={t(jarIds.length > 1 ? 'batch.form.intoEach' : 'batch.form.into')}
      jars={shown}
      moreJars={own.length > 0 ? emptyJars(context).filter((one) => !shown.includes(one)) : []}
      value={jarIds}
      onChange={onChoose}
      isMultiple={!isAmending}
      batchId={context.batchId}
      problem={problemWords('jarIds', 'chooseJar')}
      takesNew
    />
  )
}
