import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import typescript from 'typescript'
import { describe, expect, it } from 'vitest'
import { channels } from '../../shared/channels.ts'
import { impurities } from './impurities.ts'
import { rules } from './rules.ts'
import { readSources, root, sourceFile, unresolved } from './source-files.ts'
import { crossings, cycles, violations } from './violations.ts'

const product = readSources('shared', 'main', 'renderer')
const listed = (found: readonly string[]) => `\n${found.join('\n')}\n`
const nothing = listed([])

describe('the product', () => {
  it('is there to be looked at', () => {
    expect(product.length).toBeGreaterThan(50)
  })

  it('imports along the layers only', () => {
    expect(listed(violations(product, rules))).toBe(nothing)
  })

  it('keeps its screens apart', () => {
    expect(listed(crossings(product))).toBe(nothing)
  })

  it('has no circle of imports', () => {
    expect(listed(cycles(product))).toBe(nothing)
  })

  it('imports what is there, by its full name', () => {
    const lost = product.flatMap((file) =>
      unresolved(file).map(({ specifier }) => `${file.path} imports '${specifier}'`),
    )
    expect(listed(lost)).toBe(nothing)
  })

  it('keeps clock, chance and surroundings out of the engine', () => {
    const engine = product.filter(({ path }) => path.startsWith('main/engine/'))
    expect(engine.length).toBeGreaterThan(10)
    expect(listed(engine.flatMap(impurities))).toBe(nothing)
  })

  // Native code, WebAssembly and fonts stay outside the bundle; everything else is built into it.
  // fontkit comes with pdfkit: the copy that lays labels out must be the one that embeds them.
  it('installs only what cannot be bundled where it runs', () => {
    const { dependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as {
      dependencies: Record<string, string>
    }
    expect(Object.keys(dependencies)).toEqual(['better-sqlite3', 'fontkit', 'highs', 'pdfkit'])
  })

  it('pins every package to one version', () => {
    const { dependencies, optionalDependencies, devDependencies } = JSON.parse(
      readFileSync(join(root, 'package.json'), 'utf8'),
    ) as Record<string, Record<string, string>>
    const all = Object.entries({ ...dependencies, ...optionalDependencies, ...devDependencies })
    const loose = all.filter(([, version]) => !/^(npm:[\w-]+@)?\d+\.\d+\.\d+$/.test(version))
    expect(loose).toEqual([])
  })

  it('handles every channel once', () => {
    const handlers = product.filter(({ path }) => path.startsWith('main/service/handlers/'))
    const handled = handlers.flatMap(({ path, text }) => quotedKeys(path, text))
    expect(handled.sort()).toEqual(Object.keys(channels).sort())
  })
})

/** Keys such as `'jars.list'` of the objects in a file. */
function quotedKeys(path: string, text: string): string[] {
  const keys: string[] = []
  const visit = (node: typescript.Node): void => {
    const isMember = typescript.isPropertyAssignment(node) || typescript.isMethodDeclaration(node)
    if (isMember && typescript.isStringLiteral(node.name)) keys.push(node.name.text)
    typescript.forEachChild(node, visit)
  }
  visit(typescript.createSourceFile(path, text, typescript.ScriptTarget.Latest))
  return keys
}

describe('the checker', () => {
  const check = (path: string, text: string) => violations([sourceFile(path, text)], rules)

  it.each([
    ['shared/a.ts', `import { fold } from '../main/engine/index.ts'`],
    ['main/engine/a.ts', `import { readFileSync } from 'node:fs'`],
    ['main/engine/a.ts', `import type { Book } from '../cellar/open-book.ts'`],
    ['main/cellar/a.ts', `import { fold } from '../engine/ledger/fold.ts'`],
    ['main/cellar/a.ts', `export * from '../service/service.ts'`],
    ['main/service/a.ts', `import { fillDemo } from '../demo/alder-end.ts'`],
    ['main/service/a.ts', `import { asset } from '../hosts/assets.ts'`],
    ['main/service/a.ts', `import Database from 'better-sqlite3'`],
    ['main/demo/a.ts', `import { addGroup } from '../cellar/move-store.ts'`],
    ['main/hosts/a.ts', `import { app } from 'electron'`],
    ['main/hosts/a.ts', `import { createServer } from 'node:http'`],
    ['main/hosts/electron/a.ts', `import { openServer } from '../browser/open-server.ts'`],
    ['renderer/app/a.tsx', `import type { Service } from '../../main/service/service.ts'`],
    ['renderer/app/a.tsx', `const fs = await import('node:fs')`],
    ['renderer/screens/x/a.tsx', `import { LineChart } from 'recharts'`],
    ['renderer/parts/a.tsx', `import { x } from '../screens/batch/x.ts'`],
    ['main/a.ts', `import { root } from '../test/architecture/source-files.ts'`],
  ])('finds in %s: %s', (path, text) => {
    expect(check(path, text)).toHaveLength(1)
  })

  it.each([
    ['main/service/a.ts', `import { fold } from '../engine/index.ts'`],
    ['main/hosts/electron/a.ts', `import { app } from 'electron'`],
    ['renderer/charts/a.tsx', `import { LineChart } from 'recharts'`],
    ['main/engine/a.ts', `// import { readFileSync } from 'node:fs'`],
  ])('lets pass in %s: %s', (path, text) => {
    expect(check(path, text)).toEqual([])
  })

  it('says what is wrong, why, and what to do', () => {
    expect(check('main/engine/ledger/a.ts', `import fs from 'node:fs'`)).toEqual([
      "main/engine/ledger/a.ts imports 'node:fs'\n" +
        '    why not: the engine is pure calculation: same input, same answer, to the bit\n' +
        '    instead: pass what is needed as an argument, from the service',
    ])
  })

  it('finds a screen that imports another', () => {
    const text = `import { x } from '../shelf/x.ts'\nimport { y } from './y.ts'`
    expect(crossings([sourceFile('renderer/screens/batch/a.ts', text)])).toHaveLength(1)
  })

  it('finds a circle, of types as well', () => {
    const circle = [
      sourceFile('main/a.ts', `import { b } from './b.ts'`),
      sourceFile('main/b.ts', `import type { C } from './c.ts'`),
      sourceFile('main/c.ts', `export { a } from './a.ts'`),
      sourceFile('main/d.ts', `import { a } from './a.ts'`),
    ]
    expect(cycles(circle)).toEqual(['main/a.ts -> main/b.ts -> main/c.ts -> main/a.ts'])
  })

  it('finds a file that is not there', () => {
    expect(unresolved(sourceFile('main/a.ts', `import './none.ts'`))).toHaveLength(1)
    expect(unresolved(sourceFile('main/a.ts', `import '../../outside.ts'`))).toHaveLength(1)
  })

  it.each([
    'const at = Date.now()',
    'const at = new Date()',
    'const at = Date()',
    'const x = Math.random()',
    'const { env } = process\nf(process)',
    'console.log(1)',
    'globalThis.x = 1',
    'setTimeout(f, 1)',
  ])('finds what makes an engine differ: %s', (text) => {
    expect(impurities(sourceFile('main/engine/a.ts', text))).toHaveLength(1)
  })

  it.each([
    'const at = new Date(ms)',
    'const at = Date.UTC(2026, 1)',
    '// Date.now() would be wrong',
    'const x = { process: 1 }.process',
  ])('lets pass in the engine: %s', (text) => {
    expect(impurities(sourceFile('main/engine/a.ts', text))).toEqual([])
  })
})
