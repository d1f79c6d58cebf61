/**
 * A map of which each move has a version of its own: a branch reads through to the map it came
 * from and keeps only what changed, so that a cellar of decades is not copied for every move.
 * Entries are never taken out. They come in the order of a plain map's.
 */
export class BranchingMap<K, V> implements ReadonlyMap<K, V> {
  /** Shared by branches, and never changed. */
  #base: ReadonlyMap<K, V>
  /** What this version changed, or added. */
  #own: Map<K, V>
  #added: number

  constructor(base: ReadonlyMap<K, V> = new Map(), own: ReadonlyMap<K, V> = new Map(), added = 0) {
    this.#base = base
    this.#own = new Map(own)
    this.#added = added
  }

  /** A version to go on from; this one is left as it is, as long as nothing more is set in it. */
  branch(): BranchingMap<K, V> {
    // Each branch copies what is its own: once that is much, it becomes part of what is shared.
    if (this.#own.size ** 2 > this.#base.size) {
      this.#base = new Map(this)
      this.#own = new Map()
      this.#added = 0
    }
    return new BranchingMap(this.#base, this.#own, this.#added)
  }

  set(key: K, value: V): void {
    if (!this.#own.has(key) && !this.#base.has(key)) this.#added += 1
    this.#own.set(key, value)
  }

  get(key: K): V | undefined {
    return this.#own.get(key) ?? this.#base.get(key)
  }

  has(key: K): boolean {
    return this.#own.has(key) || this.#base.has(key)
  }

  get size(): number {
    return this.#base.size + this.#added
  }

  *entries(): MapIterator<[K, V]> {
    for (const [key, value] of this.#base) yield [key, this.#own.get(key) ?? value]
    for (const entry of this.#own) if (!this.#base.has(entry[0])) yield entry
  }

  *keys(): MapIterator<K> {
    for (const [key] of this.entries()) yield key
  }

  *values(): MapIterator<V> {
    for (const [, value] of this.entries()) yield value
  }

  [Symbol.iterator](): MapIterator<[K, V]> {
    return this.entries()
  }

  forEach(act: (value: V, key: K, map: ReadonlyMap<K, V>) => void): void {
    for (const [key, value] of this.entries()) act(value, key, this)
  }
}
