/** The project's own source files, each with what it imports, read with TypeScript's scanner. */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join, posix, relative } from 'node:path'
import typescript from 'typescript'

export interface Imported {
  /** As it is written in the file. */
  specifier: string
  /** A path from the project's root, or the package's specifier as it is. */
  target: string
}

export interface SourceFile {
  /** From the project's root, with forward slashes. */
  path: string
  text: string
  imports: readonly Imported[]
}

export const root = join(import.meta.dirname, '..', '..')

export const readSources = (...folders: string[]): SourceFile[] =>
  folders
    .flatMap((folder) => filesBelow(join(root, folder)))
    .filter((file) => /\.(ts|tsx|mts|mjs|js)$/.test(file))
    .map((file) => sourceFile(pathFromRoot(file), readFileSync(file, 'utf8')))

/** Type-only, dynamic and re-exporting imports count as any other. */
export function sourceFile(path: string, text: string): SourceFile {
  const { importedFiles } = typescript.preProcessFile(text, true, true)
  const imports = importedFiles.map(({ fileName }) => ({
    specifier: fileName,
    target: targetOf(path, fileName),
  }))
  return { path, text, imports }
}

function targetOf(path: string, specifier: string): string {
  const [plain = specifier] = specifier.split('?')
  return plain.startsWith('.') ? posix.join(posix.dirname(path), plain) : plain
}

/** Files that are imported by a path at which there is nothing, or which leaves the project. */
export const unresolved = ({ imports }: SourceFile): Imported[] =>
  imports.filter(
    ({ specifier, target }) =>
      specifier.startsWith('.') && (target.startsWith('..') || !existsSync(join(root, target))),
  )

export const pathFromRoot = (file: string): string => relative(root, file).replaceAll('\\', '/')

export function filesBelow(folder: string, skipped: readonly string[] = []): string[] {
  if (!existsSync(folder)) return []
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name)
    if (skipped.includes(entry.name)) return []
    return entry.isDirectory() ? filesBelow(path, skipped) : [path]
  })
}
