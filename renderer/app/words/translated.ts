/**
 * What another language must say: the same keys as English, and for each counted word all the forms
 * that the language counts in. A missing one does not compile.
 */
/** English counts "one" and "other"; what stands before the ending is the word. */
type Counted<Key> = Key extends `${infer Word}_one` ? Word : never

type IsCounted<Key, Keys> = Key extends `${infer Word}_${'one' | 'other'}`
  ? Word extends Counted<Keys>
    ? true
    : false
  : false

export type Translated<Tree, Form extends Intl.LDMLPluralRule> = {
  readonly [
    Key in keyof Tree as IsCounted<Key, keyof Tree> extends true ? never : Key
  ]: Tree[Key] extends string
    ? string
    : Tree[Key] extends readonly string[]
      ? readonly string[]
      : Translated<Tree[Key], Form>
} & {
  readonly [Key in `${Counted<keyof Tree>}_${Form}`]: string
}
