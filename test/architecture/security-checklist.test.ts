/** The table of DEVELOPERS.md says which test holds each item of the checklist: it must be there. */
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { root } from './source-files.ts'

const items = 20

interface Row {
  readonly number: number
  readonly heldBy: string
}

function rowsOf(page: string): Row[] {
  const [, section = ''] = page.split('### Security, item by item\n')
  return section
    .split('\n')
    .map((line) => line.split('|').map((cell) => cell.trim()))
    .filter((cells) => /^\d+$/.test(cells[1] ?? ''))
    .map((cells) => ({ number: Number(cells[1]), heldBy: cells.at(-2) ?? '' }))
}

/** What is wrong with a row; undefined where its test is there, or where it says why there is none. */
function wrongWith({ heldBy }: Row): string | undefined {
  if (/^no test: .{20,}/.test(heldBy)) return undefined
  const [, file, title] = /^`([^`]+)`: (.+)$/.exec(heldBy) ?? []
  if (file === undefined || title === undefined) return 'names no test'
  if (!existsSync(join(root, file))) return `${file} is not there`
  const isThere = readFileSync(join(root, file), 'utf8').includes(`'${title}'`)
  return isThere ? undefined : `${file} has no test “${title}”`
}

describe('the security checklist', () => {
  const rows = rowsOf(readFileSync(join(root, 'DEVELOPERS.md'), 'utf8'))

  it('has every item once, in order', () => {
    expect(rows.map(({ number }) => number)).toEqual(
      Array.from({ length: items }, (_, index) => index + 1),
    )
  })

  it.each(rows)('item $number names a test that is there, or says why there is none', (row) => {
    expect(wrongWith(row)).toBeUndefined()
  })

  it.each([
    ['', 'names no test'],
    ['no test: because', 'names no test'],
    ['`test/none.test.ts`: anything', 'test/none.test.ts is not there'],
    [
      '`test/architecture/rules.ts`: something',
      'test/architecture/rules.ts has no test “something”',
    ],
  ])('would find %j wanting', (heldBy, wrong) => {
    expect(wrongWith({ number: 1, heldBy })).toBe(wrong)
  })
})
