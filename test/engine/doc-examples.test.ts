import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import * as engine from '../../main/engine/index.ts'
import * as matter from '../../shared/matter.ts'

const root = new URL('../../main/engine/', import.meta.url)
const files = readdirSync(root, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .sort()

const sourceOf = (file: string) => readFileSync(new URL(file, root), 'utf8')
const docstringOf = (file: string) => /^\/\*\*[\s\S]*?\*\//.exec(sourceOf(file))?.[0] ?? ''

const examples = files.flatMap((file) =>
  [...sourceOf(file).matchAll(/@example (.+) \/\/ (.+)$/gm)].map(([, code, result]) => ({
    file,
    code: code!,
    result: result!,
  })),
)

/** Runs an example with the names of its own module, of the engine's face and of matter. */
async function run({ file, code }: { file: string; code: string }): Promise<unknown> {
  const scope = { ...matter, ...engine, ...(await import(new URL(file, root).href)) }
  return new Function(...Object.keys(scope), `return (${code})`)(...Object.values(scope))
}

/** Numbers are shown with as many decimals as the example has. */
function shown(value: unknown, like: string): string {
  if (typeof value !== 'number' || Number.isNaN(Number(like))) return JSON.stringify(value)
  return value.toFixed(like.split('.')[1]?.length ?? 0)
}

describe('docstrings of the engine', () => {
  it.each(examples)('$file: $code is $result', async (example) => {
    expect(shown(await run(example), example.result)).toBe(example.result)
  })

  it('have an example in every file of alcoholometry, solution and readings that calculates', () => {
    const without = files
      .filter((file) => /^(alcoholometry|solution|readings)\//.test(file))
      .filter((file) => !examples.some((example) => example.file === file))
    expect(without).toEqual([
      'alcoholometry/oiml-coefficients.ts',
      'readings/instruments.ts',
      'readings/measured-liquor.ts',
      'readings/one-instrument.ts',
    ])
  })

  it('are at most 12 lines between their marks at the top of a file', () => {
    const long = files
      .map((file) => ({ file, lines: docstringOf(file).split('\n').length - 2 }))
      .filter(({ lines }) => lines > 12)
    expect(long).toEqual([])
  })
})
