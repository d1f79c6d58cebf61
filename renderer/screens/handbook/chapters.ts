/** The handbook's chapters, and in each what it tells of, in order. */
export const chapters = ['stages', 'instruments', 'cautions', 'numbers', 'terms'] as const
export type Chapter = (typeof chapters)[number]

export const chapterPath = (chapter: Chapter): string =>
  chapter === 'stages' ? '/handbook' : `/handbook/${chapter}`

export const chapterOf = (name: string | undefined): Chapter =>
  chapters.find((chapter) => chapter === name) ?? 'stages'

export const steps = [
  'layer',
  'cover',
  'steep',
  'drawOff',
  'sugarDraw',
  'press',
  'marry',
  'filter',
  'bottle',
  'rest',
] as const
export type Step = (typeof steps)[number]

export const handTools = [
  'hydrometer',
  'alcoholometer',
  'refractometer',
  'boilOff',
  'scale',
  'thermometer',
] as const
export type HandTool = (typeof handTools)[number]

export const dangers = [
  'flame',
  'pouring',
  'stones',
  'rawFruit',
  'mould',
  'gas',
  'vessels',
  'drinking',
  'law',
] as const
export type Danger = (typeof dangers)[number]

export const reckonings = [
  'ledger',
  'strength',
  'sugar',
  'mixture',
  'readings',
  'steeping',
  'yields',
  'keeping',
  'ageing',
  'stock',
  'season',
] as const
export type Reckoning = (typeof reckonings)[number]
