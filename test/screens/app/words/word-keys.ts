/** The words of a language as a flat list, and what in the code asks for them. */
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

type Tree = { readonly [key: string]: string | readonly string[] | Tree }

/** By path: `shell.settings.title` -> "Settings". A list of lines is one word. */
export function leavesOf(tree: Tree, path = ''): ReadonlyMap<string, string> {
  const found = new Map<string, string>()
  for (const [key, value] of Object.entries(tree)) {
    const here = path === '' ? key : `${path}.${key}`
    if (typeof value === 'string') found.set(here, value)
    else if (Array.isArray(value)) found.set(here, value.join('\n'))
    else for (const [below, word] of leavesOf(value as Tree, here)) found.set(below, word)
  }
  return found
}

const plural = /_(?:zero|one|two|few|many|other)$/

/** As it is asked for: without the ending that the count chooses. */
export const stemOf = (key: string): string => key.replace(plural, '')

export const isPlural = (key: string): boolean => plural.test(key)

/** What is filled in: `{{count}}`, `{{jar}}`. */
export const gapsIn = (word: string): string[] =>
  [...new Set(word.match(/\{\{\w+\}\}/g))].toSorted()

/** Every source file of the window but the words themselves. */
export function sourcesUnder(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name))
    .filter((file) => !/app[\\/]words[\\/](?:en|pl)/.test(file))
    .map((file) => readFileSync(file, 'utf8'))
}

/** Whether the code asks for a key: by its whole name, or by a family such as `codes.stage.${stage}`. */
export function asker(sources: readonly string[]): (stem: string) => boolean {
  const named = new Set<string>()
  const families = new Set<string>()
  for (const source of sources) {
    for (const [, name = ''] of source.matchAll(/['"`]([\w-]+(?:\.[\w-]+)+)['"`]/g)) named.add(name)
    for (const [, family = ''] of source.matchAll(/`((?:[\w.-]|\$\{[^`{}]*\})+)`/g))
      if (/^[\w-]+\./.test(family) && family.includes('${')) families.add(family)
  }
  const patterns = [...families].map(
    (family) =>
      new RegExp(`^${family.replaceAll('.', '\\.').replaceAll(/\$\{[^}]*\}/g, '[\\w-]+')}$`),
  )
  return (stem) => named.has(stem) || patterns.some((pattern) => pattern.test(stem))
}
