import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { hostWords } from '../../main/hosts/words/host-words.ts'
import { buildIfStale, builtFiles, fingerprintOf } from '../../main/hosts/build-if-stale.ts'

let root: string
const at = (...parts: string[]) => join(root, ...parts)

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'ratafia-build-'))
  mkdirSync(at('main', 'engine'), { recursive: true })
  writeFileSync(at('main', 'engine', 'reduce.ts'), 'export {}')
  writeFileSync(at('package.json'), '{}')
})
afterEach(() => rmSync(root, { recursive: true }))

describe('fingerprintOf', () => {
  it('stays the same while the sources do', () => {
    const before = fingerprintOf(root)
    writeFileSync(at('notes.txt'), 'not a source')
    expect(fingerprintOf(root)).toBe(before)
  })

  it.each([
    ['edited', () => writeFileSync(at('main', 'engine', 'reduce.ts'), 'export { }')],
    ['touched', () => utimesSync(at('main', 'engine', 'reduce.ts'), 1, 1)],
    ['added', () => writeFileSync(at('main', 'engine', 'more.ts'), '')],
    ['removed', () => rmSync(at('main', 'engine', 'reduce.ts'))],
  ])('changes when a source is %s', (_how, change) => {
    const before = fingerprintOf(root)
    change()
    expect(fingerprintOf(root)).not.toBe(before)
  })
})

describe('buildIfStale', () => {
  it('says what to do when nothing is installed', () => {
    expect(() => buildIfStale(root)).toThrow(hostWords().problem.notInstalled(root))
  })

  it('leaves alone what was made from these very sources', () => {
    for (const file of builtFiles) {
      mkdirSync(at(file, '..'), { recursive: true })
      writeFileSync(at(file), '')
    }
    writeFileSync(at('out', 'built-from.txt'), fingerprintOf(root))
    expect(() => buildIfStale(root)).not.toThrow()
    rmSync(at(builtFiles[0] ?? ''))
    expect(() => buildIfStale(root)).toThrow('npm ci')
  })

  it('says so when the build fails', () => {
    mkdirSync(at('node_modules', 'electron-vite', 'bin'), { recursive: true })
    writeFileSync(at('node_modules', 'electron-vite', 'bin', 'electron-vite.js'), 'process.exit(3)')
    expect(() => buildIfStale(root)).toThrow('could not be built')
  })
})
