/** A new fruit with the facts of one like it, each told as taken over from there. */
import type { Fruit } from '../../../shared/schemas/fruits.ts'

export function fruitLike(
  like: Fruit,
  { id, nameEn, namePl }: Pick<Fruit, 'id' | 'nameEn' | 'namePl'>,
): Fruit {
  const from = `like:${like.id}`
  return {
    ...like,
    id,
    nameEn: nameEn.trim(),
    // A name in neither language is still its name.
    namePl: namePl.trim() || nameEn.trim(),
    latin: '',
    sources: Object.fromEntries(Object.keys(like.sources).map((field) => [field, from])),
  }
}
