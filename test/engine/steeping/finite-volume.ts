/**
 * Diffusion into a slab, cylinder or sphere from a stirred, limited volume, by brute force: thin
 * shells, implicit steps, no formula of the engine. Returns the share of the way gone at each of
 * the Fourier numbers, which must rise.
 */
export function finiteVolumeUptake(
  shape: 'slab' | 'cylinder' | 'sphere',
  alpha: number,
  fouriers: readonly number[],
): number[] {
  const shells = 400
  const power = { slab: 1, cylinder: 2, sphere: 3 }[shape]
  // Shells thinner towards the surface, where the profile is steep at first.
  const edges = Array.from({ length: shells + 1 }, (_, i) => 1 - (1 - i / shells) ** 2)
  const volumes = edges.slice(1).map((edge, i) => edge ** power - (edges[i] as number) ** power)
  const centres = edges.slice(1).map((edge, i) => (edge + (edges[i] as number)) / 2)
  const areas = edges.map((edge) => power * edge ** (power - 1))
  // Unknowns: shells from the middle outwards, then the liquid, of volume alpha (piece: 1).
  const sizes = [...volumes, alpha]
  const joins = centres.map((centre, i) => {
    const next = i + 1 < shells ? (centres[i + 1] as number) : 1
    return (areas[i + 1] as number) / (next - centre)
  })
  let state = [...volumes.map(() => 0), 1]
  let time = 0
  const found: number[] = []
  for (const until of fouriers) {
    // Steps grow with time: early ones must follow the square root.
    while (time < until - 1e-15) {
      const step = Math.min(until - time, Math.max(1e-7, time / 200))
      state = implicitStep(state, sizes, joins, step)
      time += step
    }
    const inside = volumes.reduce((sum, volume, i) => sum + volume * (state[i] as number), 0)
    found.push(inside / (alpha / (1 + alpha)))
  }
  return found
}

/** One backward Euler step of a chain of stirred volumes; Thomas' algorithm. */
function implicitStep(
  state: readonly number[],
  sizes: readonly number[],
  joins: readonly number[],
  step: number,
): number[] {
  const upper: number[] = []
  const right: number[] = []
  for (const [i, size] of sizes.entries()) {
    const [left, next] = [joins[i - 1] ?? 0, joins[i] ?? 0]
    const diagonal = size / step + left + next - left * (upper[i - 1] ?? 0)
    upper.push(next / diagonal)
    right.push(((size / step) * (state[i] as number) + left * (right[i - 1] ?? 0)) / diagonal)
  }
  const result = [...right]
  for (let i = sizes.length - 2; i >= 0; i -= 1)
    result[i] = (right[i] as number) + (upper[i] as number) * (result[i + 1] as number)
  return result
}
