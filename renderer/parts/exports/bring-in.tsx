/** Bringing in an exported cellar. */
import { useState } from 'react'
import { useRead, useWrite } from '../../app/queries.ts'
import { useWords } from '../../app/words/use-words.ts'
import { PutInPlace, type LookedAt } from '../backups/put-in-place.tsx'
import { useLookIntoExportJob } from '../backups/use-job.ts'
import { Button } from '../button/button.tsx'
import { FoundExports } from './found-exports.tsx'

export interface BringInProps {
  /** Called when the cellar has been put in place, while this may be on its way out. */
  onBroughtIn?: () => void
}

/** Folded away until it is asked for: folders are read then. */
export function BringIn({ onBroughtIn }: BringInProps) {
  const t = useWords()
  const [isAsked, setAsked] = useState(false)
  if (isAsked) return <ExportToBringIn onBroughtIn={onBroughtIn} />
  return (
    <div>
      <Button onPress={() => setAsked(true)}>{t('exports.in.ask')}</Button>
    </div>
  )
}

function ExportToBringIn({ onBroughtIn }: { onBroughtIn: (() => void) | undefined }) {
  const [folder, setFolder] = useState<string>()
  return (
    <PutInPlace
      at={useExport()}
      found={useRead('exports.list', folder === undefined ? {} : { folder })}
      onFolder={setFolder}
      list={(found, onLook) => <FoundExports found={found} onLook={onLook} />}
      onDone={onBroughtIn}
    />
  )
}

export function useExport(): LookedAt {
  const look = useLookIntoExportJob()
  return { of: 'export', look, preview: look.job?.importPreview, put: useWrite('exports.import') }
}
