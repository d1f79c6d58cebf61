/**
 * `npm test`: everything; `npm run check`: what needs no browser. Each step shows its own output
 * as it runs; the last line of all is the sum: how many passed, failed and were skipped.
 */
import { spawn } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildIfStale } from '../main/hosts/build-if-stale.ts'
import { findChromium, howToGetChromium } from './e2e/chromium.ts'
import {
  countOfExit,
  countOfPlaywright,
  countOfVitest,
  skippedOfPlaywright,
  sumOf,
  told,
  type Count,
} from './counts.ts'

const root = join(import.meta.dirname, '..')
const folder = mkdtempSync(join(tmpdir(), 'ratafia-test-'))
const tool = (...parts: string[]) => join(root, 'node_modules', ...parts)
const playwright = [
  tool('@playwright/test', 'cli.js'),
  'test',
  '--config=test/playwright.config.ts',
]

interface Step {
  name: string
  run: () => Promise<Count> | Count
}

const check: readonly Step[] = [
  { name: 'types', run: () => plain(tool('typescript-7', 'bin', 'tsc'), '--noEmit') },
  {
    name: 'lint',
    run: () => plain(tool('oxlint', 'bin', 'oxlint'), '-c', 'test/oxlint.json', '--deny-warnings'),
  },
  {
    name: 'format',
    run: () =>
      plain(
        tool('prettier', 'bin', 'prettier.cjs'),
        '--config=test/prettier.json',
        '--ignore-path=.gitignore',
        '--check',
        '.',
      ),
  },
  {
    name: 'unused',
    run: () =>
      plain(tool('knip', 'bin', 'knip.js'), '--config=test/knip.jsonc', '--no-config-hints'),
  },
  { name: 'unit', run: () => vitest('node', 'screens') },
]

let isBuilt = false
const whole: readonly Step[] = [
  ...check,
  { name: 'build', run: build },
  { name: 'package', run: () => vitest('packages') },
  { name: 'e2e', run: e2e },
]

const [wanted] = process.argv.slice(2)
if (wanted !== undefined && wanted !== 'check') {
  console.error(`npm test takes 'check' or nothing, not '${wanted}'`)
  process.exitCode = 2
} else {
  process.exitCode = await runAll(wanted === 'check' ? check : whole)
}
rmSync(folder, { recursive: true })

async function runAll(steps: readonly Step[]): Promise<0 | 1> {
  const lines: string[] = []
  const counts: Count[] = []
  for (const { name, run } of steps) {
    console.log(`\n== ${name}`)
    const started = performance.now()
    const count = await run()
    const seconds = ((performance.now() - started) / 1000).toFixed(1)
    lines.push(`${name.padEnd(8)}${seconds.padStart(6)} s  ${told(count)}`)
    counts.push(count)
  }
  const sum = sumOf(counts)
  console.log(`\n${lines.join('\n')}\n\n${told(sum)}`)
  return sum.failed === 0 ? 0 : 1
}

async function plain(...args: string[]): Promise<Count> {
  return countOfExit(await node(args))
}

async function vitest(...projects: string[]): Promise<Count> {
  const report = join(folder, `vitest-${projects.join('-')}.json`)
  const exitCode = await node([
    tool('vitest', 'vitest.mjs'),
    'run',
    '--config=test/vitest.config.ts',
    ...projects.map((project) => `--project=${project}`),
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
  ])
  return countOfVitest(readReport(report), exitCode)
}

/** Always: that the last build is up to date does not prove that there can be another. */
function build(): Count {
  rmSync(join(root, 'out', 'built-from.txt'), { force: true })
  try {
    buildIfStale(root)
    isBuilt = true
  } catch (error) {
    console.error(error instanceof Error ? error.message : error)
  }
  return countOfExit(isBuilt ? 0 : 1)
}

async function e2e(): Promise<Count> {
  const report = join(folder, 'playwright.json')
  const env = { PLAYWRIGHT_JSON_OUTPUT_FILE: report }
  const cannot = isBuilt ? undefined : 'there is no build to test'
  const why = cannot ?? (findChromium() ? undefined : howToGetChromium)
  if (why !== undefined) {
    console.log(`skipped: ${why}`)
    await node([...playwright, '--list', '--reporter=json'], env)
    return skippedOfPlaywright(readReport(report))
  }
  const exitCode = await node([...playwright, '--reporter=list,json'], env)
  return countOfPlaywright(readReport(report), exitCode)
}

function readReport(file: string): unknown {
  try {
    return JSON.parse(readFileSync(file, 'utf8')) as unknown
  } catch {
    return undefined
  }
}

/** Resolves to the exit code; 1 when there is none. */
function node(args: readonly string[], env: Record<string, string> = {}): Promise<number> {
  return new Promise((done) => {
    const child = spawn(process.execPath, args, {
      cwd: root,
      stdio: 'inherit',
      env: { ...process.env, ...env },
    })
    const stop = () => void child.kill()
    process.once('SIGTERM', stop)
    child.on('error', () => done(1))
    child.on('exit', (code) => {
      process.off('SIGTERM', stop)
      done(code ?? 1)
    })
  })
}
