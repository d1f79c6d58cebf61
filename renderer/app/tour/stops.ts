/** What a newcomer is shown of the demo, in the order in which a year goes. */
export const stops = [
  { id: 'today', path: '/today' },
  { id: 'batches', path: '/batches' },
  { id: 'draft', path: '/draft' },
  { id: 'marry', path: '/marry' },
  { id: 'shelf', path: '/shelf/view/ageing' },
  { id: 'season', path: '/season' },
  { id: 'bench', path: '/bench/boil-off' },
  { id: 'safekeeping', path: '/safekeeping' },
] as const
export type StopId = (typeof stops)[number]['id']
