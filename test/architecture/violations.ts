/** Finds what breaks the rules, and says it so that it can be mended. */
import type { Rule } from './rules.ts'
import type { SourceFile } from './source-files.ts'

export const violations = (files: readonly SourceFile[], rules: readonly Rule[]): string[] =>
  files.flatMap((file) =>
    rules
      .filter((rule) => isUnder(file.path, rule.from) && !isUnder(file.path, rule.except ?? []))
      .flatMap((rule) =>
        file.imports
          .filter(({ target }) => isForbidden(target, rule))
          .map(({ specifier }) => told(file.path, specifier, rule)),
      ),
  )

function isForbidden(target: string, { only, never }: Rule): boolean {
  // The engine's face may be imported where its inside may not.
  if (never && isUnder(target, never) && target !== 'main/engine/index.ts') return true
  return only !== undefined && !isUnder(target, only)
}

/** Whether a path or package is one of those named, or lies in it. */
const isUnder = (target: string, names: readonly string[]): boolean =>
  names.some((name) =>
    name.endsWith('/') || name.endsWith(':')
      ? target.startsWith(name)
      : target === name || target.startsWith(`${name}/`),
  )

/** Screens are features: each reads alone. */
export const crossings = (files: readonly SourceFile[]): string[] =>
  files.flatMap(({ path, imports }) => {
    const own = featureOf(path)
    return imports
      .filter(({ target }) => own && featureOf(target) && featureOf(target) !== own)
      .map(({ specifier }) =>
        told(path, specifier, {
          reason: 'screens never import each other, so that each can be read and removed alone',
          remedy: 'move what both need to renderer/parts/',
        }),
      )
  })

const featureOf = (path: string) => /^renderer\/screens\/([^/]+)\//.exec(path)?.[1]

const told = (path: string, specifier: string, why: Pick<Rule, 'reason' | 'remedy'>) =>
  `${path} imports '${specifier}'\n    why not: ${why.reason}\n    instead: ${why.remedy}`

/** Each circle of imports once, as the files in it, in order. */
export function cycles(files: readonly SourceFile[]): string[] {
  const importsOf = new Map(
    files.map((file) => [file.path, file.imports.map((each) => each.target)]),
  )
  const found = new Map<string, string>()
  const finished = new Set<string>()

  function visit(path: string, trail: readonly string[]): void {
    const start = trail.indexOf(path)
    if (start >= 0) {
      const circle = trail.slice(start)
      found.set([...circle].sort().join(), [...circle, path].join(' -> '))
      return
    }
    if (finished.has(path)) return
    for (const target of importsOf.get(path) ?? []) visit(target, [...trail, path])
    finished.add(path)
  }

  for (const { path } of files) visit(path, [])
  return [...found.values()]
}
