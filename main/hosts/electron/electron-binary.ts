/**
 * Finds Electron's binary, or fetches it. Never by requiring the electron package: that starts a
 * download without an end.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'

const packageFolder = (root: string) => join(root, 'node_modules', 'electron')

export function electronBinary(root: string): string | undefined {
  try {
    const name = readFileSync(join(packageFolder(root), 'path.txt'), 'utf8').trim()
    const folder = process.env['ELECTRON_OVERRIDE_DIST_PATH'] ?? join(packageFolder(root), 'dist')
    const file = join(folder, name)
    return existsSync(file) ? file : undefined
  } catch {
    return undefined
  }
}

/** Waits until it is there, or has failed: for whoever asked for it. */
export function fetchElectron(root: string): string | undefined {
  runInstaller(root, undefined)
  return electronBinary(root)
}

/** One short try for each `npm ci`: a machine that cannot have Electron must not wait every time. */
export function fetchElectronOnce(
  root: string,
  limitMs: number,
  onTry = () => {},
): string | undefined {
  const mark = join(root, 'node_modules', '.cache', 'ratafia', 'electron-was-tried')
  if (existsSync(mark)) return undefined
  mkdirSync(dirname(mark), { recursive: true })
  writeFileSync(mark, '')
  onTry()
  runInstaller(root, limitMs)
  return electronBinary(root)
}

function runInstaller(root: string, limitMs: number | undefined): void {
  const installer = join(packageFolder(root), 'install.js')
  if (!existsSync(installer)) return
  spawnSync(process.execPath, [installer], {
    stdio: limitMs === undefined ? ['ignore', 2, 2] : 'ignore',
    ...(limitMs !== undefined && { timeout: limitMs }),
  })
}
