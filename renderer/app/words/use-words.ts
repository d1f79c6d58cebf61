/**
 * The words on screen by key: `t('codes.stage.steeping')`. i18next can type its keys too, but
 * with this many it instantiates two million types; these paths are worked out once and say the same.
 */
import { useTranslation } from 'react-i18next'
import type { en } from './en.ts'

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

export function useWords(): Words {
  const { t } = useTranslation()
  return t as unknown as Words
}

/** Words that are a list, such as the steps of a method. */
export function useWordList(): (key: WordListKey) => readonly string[] {
  const { t } = useTranslation()
  return (key) => t(key, { returnObjects: true }) as unknown as readonly string[]
}
