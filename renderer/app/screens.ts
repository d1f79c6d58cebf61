/** The screens that the navigation names, in its order. */
export const screens = [
  { path: '/today', name: 'today' },
  { path: '/batches', name: 'batches' },
  { path: '/draft', name: 'draft' },
  { path: '/marry', name: 'marry' },
  { path: '/shelf', name: 'shelf' },
  { path: '/season', name: 'season' },
  { path: '/bench', name: 'bench' },
  { path: '/cellar-room', name: 'cellarRoom' },
  { path: '/fruits', name: 'fruits' },
  { path: '/safekeeping', name: 'safekeeping' },
] as const
