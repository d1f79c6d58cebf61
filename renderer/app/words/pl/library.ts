/**
 * What the program's own library says, by the English sentence that comes from it. A maker's own
 * words in the same places are not in here, and stay as they were written.
 */
import { explanations } from './library/explanations.ts'
import { fruit } from './library/fruit.ts'
import { sources } from './library/sources.ts'

const known: Readonly<Record<string, string>> = { ...explanations, ...fruit, ...sources }

/** A source may name its record, or the fruit that it was taken over from. */
const detailed = /^(?<said>.*?)(?<joint>; record |: )(?<detail>[^:;]+)$/u

export function inPolish(text: string): string {
  const whole = known[text]
  if (whole !== undefined) return whole
  const { said = '', joint, detail = '' } = detailed.exec(text)?.groups ?? {}
  const part = known[said]
  if (part === undefined) return text
  return `${part}${joint === ': ' ? joint : '; rekord '}${detail}`
}
