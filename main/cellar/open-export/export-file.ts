/** An export as a file: what stands where inside, and what it says of itself. */
import { readdir, stat } from 'node:fs/promises'
import { join } from 'node:path'
import * as z from 'zod'
import {
  ExportManifest,
  exportFormat,
  exportVersion,
  type FoundExport,
} from '../../../shared/schemas/exports.ts'
import { textOf, withZip, type OpenZip } from '../zip-reader.ts'
import { ExportUnfit, asExport } from './export-unfit.ts'
import { valueIn } from './json-lines.ts'
import { mustHaveRoom } from './safe-zip.ts'

/** Not the ending of a backup: neither is to be taken for the other. */
export const exportEnding = '.cellar.zip'

export const manifestEntry = 'manifest.json'
export const readMeEntry = 'read me.txt'
/** `season_plan` of the book is `data/season-plan.jsonl`, by `schemas/season-plan.schema.json`. */
export const dataEntry = (table: string) => `data/${table.replaceAll('_', '-')}.jsonl`
export const schemaEntry = (table: string) => `schemas/${table.replaceAll('_', '-')}.schema.json`
export const tableEntry = (name: string) => `tables/${name}.csv`

const mostManifestBytes = 1024 * 1024

const AnyVersion = z.object({ format: z.literal(exportFormat), version: z.number() })

export async function manifestIn(zip: OpenZip): Promise<ExportManifest> {
  mustHaveRoom(zip)
  if (!zip.entries.has(manifestEntry))
    throw new ExportUnfit('notAnExport', 'there is no manifest inside')
  const value = valueIn(await textOf(zip, manifestEntry, mostManifestBytes))
  const { data: known } = AnyVersion.safeParse(value)
  if (!known) throw new ExportUnfit('notAnExport', 'its manifest is of something else')
  if (known.version > exportVersion)
    throw new ExportUnfit('newerProgram', `the format is of version ${known.version}`)
  const read = ExportManifest.safeParse(value)
  if (!read.success)
    throw new ExportUnfit('notBySchema', `manifest.json: ${z.prettifyError(read.error)}`)
  return read.data
}

/** What an export says of itself; nothing else is read. */
export async function foundExport(file: string): Promise<FoundExport> {
  let bytes = 0
  try {
    bytes = (await stat(file)).size
    const manifest = await asExport(() => withZip(file, manifestIn))
    return { file, bytes, manifest, problem: null }
  } catch (error) {
    const problem = error instanceof ExportUnfit ? error.problem : 'unreadable'
    return { file, bytes, manifest: null, problem }
  }
}

/** A folder of something else is not read through. */
const mostListed = 200

const when = ({ manifest }: FoundExport): string => manifest?.madeAt ?? ''

/** The exports in a folder, the newest first, and then what cannot be read. */
export async function exportsIn(folder: string): Promise<FoundExport[]> {
  const names = (await readdir(folder)).filter((name) => name.endsWith(exportEnding)).sort()
  const found: FoundExport[] = []
  for (const name of names.slice(-mostListed)) found.push(await foundExport(join(folder, name)))
  return found.sort((a, b) => (when(a) < when(b) ? 1 : -1))
}
