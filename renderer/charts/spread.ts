/** Moves labels apart along one axis until none covers another, each as near its place as it can. */
export function spread(
  wanted: readonly number[],
  apart: number,
  { from, to }: { readonly from: number; readonly to: number },
): number[] {
  const order = wanted.map((_, index) => index).sort((a, b) => (wanted[a] ?? 0) - (wanted[b] ?? 0))
  const placed = [...wanted]
  let least = from
  for (const index of order) {
    placed[index] = Math.max(placed[index] ?? 0, least)
    least = (placed[index] ?? 0) + apart
  }
  let most = to
  for (const index of order.toReversed()) {
    placed[index] = Math.min(placed[index] ?? 0, most)
    most = (placed[index] ?? 0) - apart
  }
  return placed
}
