/**
 * The words on screen by key: `t('codes.stage.steeping')`. i18next can type its keys too, but
 * with this many it instantiates two million types; these paths are worked out once and say the same.
 */
import type { en } from './en.ts'
import { i18n } from './i18n.ts'

type PluralEnding = '_zero' | '_one' | '_two' | '_few' | '_many' | '_other'
type Stem<Key extends string> = Key extends `${infer Word}${PluralEnding}` ? Word : Key

/** Paths to what is a `Leaf` in the words; a list is one leaf and not its lines. */
type Paths<Tree, Leaf> = {
  [Key in keyof Tree & string]: Tree[Key] extends string | readonly string[]
    ? Tree[Key] extends Leaf
      ? Stem<Key>
      : never
    : `${Key}.${Paths<Tree[Key], Leaf>}`
}[keyof Tree & string]

export type WordKey = Paths<typeof en, string>
export type WordListKey = Paths<typeof en, readonly string[]>

export type Words = (key: WordKey, values?: Readonly<Record<string, string | number>>) => string

const translate = i18n.t as unknown as Words

/** Words without values never change, and a screen asks for the same hundred at every movement. */
const plain = new Map<WordKey, string>()

const words: Words = (key, values) => {
  if (values) return translate(key, values)
  const known = plain.get(key)
  if (known !== undefined) return known
  const word = translate(key)
  plain.set(key, word)
  return word
}

/** A window speaks one language for its life: another would need these words looked up anew. */
export const useWords = (): Words => words

/** Words that are a list, such as the steps of a method. */
export const useWordList = (): ((key: WordListKey) => readonly string[]) => list

const list = (key: WordListKey) =>
  i18n.t(key, { returnObjects: true }) as unknown as readonly string[]
