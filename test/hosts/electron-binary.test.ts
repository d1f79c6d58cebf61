import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import {
  electronBinary,
  fetchElectron,
  fetchElectronOnce,
} from '../../main/hosts/electron/electron-binary.ts'

let root: string
let folder: string

/** Stands for the package's own installer, which may never come to an end. */
const installer = (script: string) => writeFileSync(join(folder, 'install.js'), script)
const thatWorks = `
  const fs = require('node:fs')
  fs.mkdirSync(__dirname + '/dist', { recursive: true })
  fs.writeFileSync(__dirname + '/dist/electron', '')
  fs.writeFileSync(__dirname + '/path.txt', 'electron')`
const thatCounts = `require('node:fs').appendFileSync(__dirname + '/tries.txt', 'x')`
const thatHangs = 'setInterval(() => {}, 1000)'

beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'ratafia-electron-'))
  folder = join(root, 'node_modules', 'electron')
  mkdirSync(folder, { recursive: true })
})
afterEach(() => rmSync(root, { recursive: true }))

describe('electronBinary', () => {
  it('is undefined without the package, its path file, or the binary', () => {
    expect(electronBinary(join(root, 'none'))).toBeUndefined()
    expect(electronBinary(root)).toBeUndefined()
    writeFileSync(join(folder, 'path.txt'), 'electron')
    expect(electronBinary(root)).toBeUndefined()
  })
})

describe('fetchElectronOnce', () => {
  it('gives the binary that the installer brought', () => {
    installer(thatWorks)
    expect(fetchElectronOnce(root, 5000)).toBe(join(folder, 'dist', 'electron'))
  })

  it('gives up at the limit', () => {
    installer(thatHangs)
    const started = performance.now()
    expect(fetchElectronOnce(root, 300)).toBeUndefined()
    expect(performance.now() - started).toBeLessThan(3000)
  })

  it('tries a single time', () => {
    installer(thatCounts)
    const onTry = vi.fn<() => void>()
    expect(fetchElectronOnce(root, 5000, onTry)).toBeUndefined()
    rmSync(join(folder, 'tries.txt'))
    expect(fetchElectronOnce(root, 5000, onTry)).toBeUndefined()
    expect(onTry).toHaveBeenCalledTimes(1)
    expect(existsSync(join(folder, 'tries.txt'))).toBe(false)
  })
})

describe('fetchElectron', () => {
  it('tries again even so', () => {
    installer(thatCounts)
    fetchElectronOnce(root, 5000)
    installer(thatWorks)
    expect(fetchElectron(root)).toBe(join(folder, 'dist', 'electron'))
  })
})
