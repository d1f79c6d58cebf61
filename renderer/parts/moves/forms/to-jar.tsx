/** The vessel that receives a liquid: empty ones big enough, the batch's own, or a new one. */
import { useWords } from '../../../app/words/use-words.ts'
import type { Problem } from '../drafts/draft-basics.ts'
import { emptyJars, hasFruit, ownJars, type LogContext } from '../drafts/log-context.ts'
import { JarPicker } from '../jar-picker.tsx'
import { useProblemWords } from './form-basics.ts'

interface ToJarProps {
  context: LogContext
  value: string | undefined
  onChange: (jarId: string) => void
  problems: readonly Problem[]
  /** How much is to go in: vessels that are too small are not offered. */
  volumeMl: number
  /** Jars that cannot receive because they give. */
  not?: readonly string[]
}

export function ToJar({ context, value, onChange, problems, volumeMl, not = [] }: ToJarProps) {
  const t = useWords()
  const problemWords = useProblemWords(problems)
  const bySize = emptyJars(context).toSorted((a, b) => a.jar.capacityMl - b.jar.capacityMl)
  const isBigEnough = (capacityMl: number) => capacityMl >= volumeMl
  const own = ownJars(context)
  const canTake = [...bySize, ...own].filter(({ jar }) => !not.includes(jar.id))
  const shown = canTake.filter((one) =>
    one.contents ? !hasFruit(one) : isBigEnough(one.jar.capacityMl),
  )
  const chosen = context.jars.find(({ jar }) => jar.id === value)
  return (
    <JarPicker
      label={t('batch.form.into')}
      jars={chosen && !shown.includes(chosen) ? [chosen, ...shown] : shown}
      moreJars={canTake.filter((one) => !shown.includes(one) && one !== chosen)}
      value={value === undefined ? [] : [value]}
      onChange={([jarId]) => {
        if (jarId !== undefined) onChange(jarId)
      }}
      batchId={context.batchId}
      problem={problemWords('toJarId', 'chooseJar')}
      takesNew
    />
  )
}
