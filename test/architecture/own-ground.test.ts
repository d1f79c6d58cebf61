/** Nothing in the project points to a place outside it. */
import { readFileSync, statSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { filesBelow, pathFromRoot, root } from './source-files.ts'

/** A letter of each in brackets, so that this file does not find itself. */
const foreign = new RegExp(
  [
    String.raw`(?<![\w.-])/(?:[w]ork|[f]arm)/`,
    String.raw`\.\./[s]hared/(?:design|reference)`,
    '[s]eed document',
    String.raw`/[h]ome/(?!maker\b)\w+/`,
  ].join('|'),
  'i',
)

const foreignIn = (text: string): string | undefined => foreign.exec(text)?.[0]

describe('the tree', () => {
  it('names no place of the machine it was made on', () => {
    const files = filesBelow(root, ['node_modules', 'out', 'release', '.git'])
    expect(files.length).toBeGreaterThan(50)
    const found = files
      .filter((file) => statSync(file).size < 5_000_000)
      .map((file) => [pathFromRoot(file), foreignIn(readFileSync(file, 'latin1'))])
      .filter(([, place]) => place !== undefined)
    expect(found).toEqual([])
  })

  it.each(['work', 'farm'].map((name) => `see /${name}/main/x.ts`))('may not say: %s', (text) => {
    expect(foreignIn(text)).toBeDefined()
  })

  it('may speak of work and farms', () => {
    expect(foreignIn('a day of work/rest on the farm; test/work/x')).toBeUndefined()
  })
})
