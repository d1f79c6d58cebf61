/** What comes first of all that matches what was typed. */
import { plain } from '../../../shared/plain.ts'

export interface Finding {
  readonly id: string
  readonly kind: FindingKind
  readonly name: string
  /** Said after the name: what stands in the jar, when a lot was bottled. */
  readonly also?: string | undefined
  readonly path?: string | undefined
  readonly act?: (() => void) | undefined
}

/** In the order in which equals are shown. */
export const findingKinds = ['screen', 'action', 'batch', 'jar', 'lot', 'draft', 'fruit'] as const
export type FindingKind = (typeof findingKinds)[number]

/** Every word typed must stand somewhere; a name that begins with them goes before one that holds them. */
export function rankFindings(
  findings: readonly Finding[],
  typed: string,
  limit: number,
): readonly Finding[] {
  const words = plain(typed).split(/\s+/).filter(Boolean)
  if (words.length === 0) {
    return findings.filter(({ kind }) => kind === 'screen' || kind === 'action').slice(0, limit)
  }
  return findings
    .map((finding) => ({ finding, rank: rankOf(finding, words) }))
    .filter(({ rank }) => rank !== undefined)
    .sort((a, b) => Number(a.rank) - Number(b.rank))
    .slice(0, limit)
    .map(({ finding }) => finding)
}

/** Lower is better; undefined where a word is missing. */
function rankOf({ name, also = '', kind }: Finding, words: readonly string[]): number | undefined {
  const plainName = plain(name)
  const all = `${plainName} ${plain(also)}`
  if (!words.every((word) => all.includes(word))) return undefined
  const closeness = plainName.startsWith(words.join(' '))
    ? 0
    : words.every((word) => begins(plainName, word))
      ? 1
      : words.every((word) => begins(all, word))
        ? 2
        : 3
  return closeness * findingKinds.length + findingKinds.indexOf(kind)
}

const begins = (text: string, word: string): boolean =>
  text.split(/[^\p{L}\p{N}]+/u).some((one) => one.startsWith(word))
