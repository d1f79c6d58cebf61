/** The one script that must run on any Node: as it is, and with an old Node made believe. */
import { spawnSync } from 'node:child_process'
import { chmodSync, copyFileSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'

let root: string
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'ratafia-node-'))
  mkdirSync(join(root, 'main'))
  copyFileSync('main/node24.mjs', join(root, 'main', 'node24.mjs'))
  writeFileSync(
    join(root, 'script.ts'),
    `const words: string[] = process.argv.slice(2)
    console.log(JSON.stringify({ words, argv1: process.argv[1], mark: process.env.RATAFIA_HANDED_OVER }))
    process.exitCode = 7`,
  )
  writeFileSync(
    join(root, 'as-old.cjs'),
    `Object.defineProperty(process, 'versions', { value: { ...process.versions, node: '20.19.0' } })
    Object.defineProperty(process, 'version', { value: 'v20.19.0' })`,
  )
})
afterEach(() => rmSync(root, { recursive: true }))

const run = (...args: string[]) =>
  spawnSync(process.execPath, args, { cwd: root, encoding: 'utf8' })
const runOnOldNode = (...args: string[]) => run('--require', './as-old.cjs', ...args)

/** A Node for node_modules that is new enough: this one, by another name. */
function installNode(script: string) {
  mkdirSync(join(root, 'node_modules', 'node', 'bin'), { recursive: true })
  const file = join(root, 'node_modules', 'node', 'bin', 'node')
  writeFileSync(file, `#!/bin/sh\n${script}\n`)
  chmodSync(file, 0o755)
}

describe('node24.mjs', () => {
  it('runs the script with its arguments and exit code', () => {
    const { status, stdout } = run('main/node24.mjs', 'script.ts', '--host', 'browser')
    expect(JSON.parse(stdout)).toEqual({
      words: ['--host', 'browser'],
      argv1: expect.stringMatching(/script\.ts$/),
    })
    expect(status).toBe(7)
  })

  it('says how it is used when no script is named', () => {
    expect(run('main/node24.mjs')).toMatchObject({
      status: 2,
      stderr: expect.stringContaining('Usage'),
    })
  })

  it('ends with 1 when the script throws', () => {
    writeFileSync(join(root, 'throws.ts'), `throw new Error('broken')`)
    const { status, stderr } = run('main/node24.mjs', 'throws.ts')
    expect(status).toBe(1)
    expect(stderr).toContain('broken')
  })
})

describe.skipIf(process.platform === 'win32')('node24.mjs on an old Node', () => {
  it('hands over to the Node in node_modules', () => {
    installNode(`exec "${process.execPath}" "$@"`)
    const { status, stdout } = runOnOldNode('main/node24.mjs', 'script.ts', 'a b')
    expect(JSON.parse(stdout)).toMatchObject({ words: ['a b'] })
    expect(stdout).not.toContain('mark')
    expect(status).toBe(7)
  })

  it('says what is needed when there is none', () => {
    const { status, stdout, stderr } = runOnOldNode('main/node24.mjs', 'script.ts')
    expect(stderr).toContain('Ratafia needs Node 24 or newer; this is v20.19.0.')
    expect(stderr).toContain('npm ci')
    expect(stdout).toBe('')
    expect(status).toBe(1)
  })

  it('does not hand over for ever to one that is too old as well', () => {
    installNode(`exec "${process.execPath}" --require "${root}/as-old.cjs" "$@"`)
    const { status, stderr } = runOnOldNode('main/node24.mjs', 'script.ts')
    expect(stderr).toContain('Ratafia needs Node 24')
    expect(status).toBe(1)
  })

  it('passes SIGTERM on and ends with the exit code of the script', async () => {
    installNode(`exec "${process.execPath}" "$@"`)
    writeFileSync(
      join(root, 'waits.ts'),
      `process.on('SIGTERM', () => process.exit(9))
      setInterval(() => {}, 1000)
      process.kill(process.ppid, 'SIGTERM')`,
    )
    expect(runOnOldNode('main/node24.mjs', 'waits.ts').status).toBe(9)
  })
})
