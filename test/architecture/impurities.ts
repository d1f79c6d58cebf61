/** Finds what would make the engine answer differently the next time: clock, chance, surroundings. */
import typescript from 'typescript'
import type { SourceFile } from './source-files.ts'

const surroundings = new Set([
  'process',
  'performance',
  'crypto',
  'fetch',
  'setTimeout',
  'setInterval',
  'setImmediate',
  'queueMicrotask',
  'console',
  'globalThis',
  'require',
])

export function impurities({ path, text }: SourceFile): string[] {
  const file = typescript.createSourceFile(path, text, typescript.ScriptTarget.Latest, true)
  const found: string[] = []

  function visit(node: typescript.Node): void {
    const words = impurityOf(node)
    if (words !== undefined) {
      const { line } = file.getLineAndCharacterOfPosition(node.getStart())
      found.push(`${path}:${line + 1} uses ${words}; pass it in as an argument`)
    }
    typescript.forEachChild(node, visit)
  }

  visit(file)
  return found
}

function impurityOf(node: typescript.Node): string | undefined {
  if (typescript.isPropertyAccessExpression(node)) {
    const words = node.getText()
    if (words === 'Date.now' || words === 'Math.random') return words
  }
  if (typescript.isNewExpression(node) && node.expression.getText() === 'Date')
    return node.arguments?.length ? undefined : 'new Date() without a time'
  if (typescript.isCallExpression(node) && node.expression.getText() === 'Date') return 'Date()'
  if (typescript.isIdentifier(node) && surroundings.has(node.text) && isFreeName(node))
    return node.text
  return undefined
}

/** The thing itself, not a property, key or type that happens to have its name. */
function isFreeName(node: typescript.Identifier): boolean {
  const { parent } = node
  if (typescript.isPropertyAccessExpression(parent)) return parent.expression === node
  return typescript.isCallExpression(parent) || typescript.isBinaryExpression(parent)
}
