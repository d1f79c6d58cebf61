/** A backup or an export that Ratafia was opened with: what is in it, and what would change. */
import { useEffect, useRef } from 'react'
import { useLocation } from 'wouter'
import { useWords } from '../../../app/words/use-words.ts'
import { LookInto, type LookedAt } from '../../../parts/backups/put-in-place.tsx'
import { useBackup } from '../../../parts/backups/restore.tsx'
import { useExport } from '../../../parts/exports/bring-in.tsx'
import { Page, Section } from '../../../parts/page/page.tsx'

/** Exports are named so by the book; whatever else is packed is tried as a backup. */
const isExport = (file: string) => file.toLowerCase().endsWith('.cellar.zip')

export function LookIntoScreen({ file }: { file: string }) {
  const t = useWords()
  return (
    <Page title={t('safekeeping.lookInto.title')} lead={file}>
      <Section title={t('safekeeping.lookInto.change')}>
        {isExport(file) ? <Export file={file} /> : <Backup file={file} />}
      </Section>
    </Page>
  )
}

const Backup = ({ file }: { file: string }) => <AtOnce at={useBackup()} file={file} />
const Export = ({ file }: { file: string }) => <AtOnce at={useExport()} file={file} />

function AtOnce({ at, file }: { at: LookedAt; file: string }) {
  const [, navigate] = useLocation()
  const begun = useRef(false)
  const { begin } = at.look
  useEffect(() => {
    // Looking takes its time: once is enough.
    if (begun.current) return
    begun.current = true
    begin(file)
  }, [begin, file])
  return <LookInto at={at} onLeft={() => navigate('/')} />
}
