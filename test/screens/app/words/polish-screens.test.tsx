import { screen, waitFor } from '@testing-library/react'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import {
  fruitLibrary,
  fruitOf,
  measure,
  outcomeOf,
  usualDraft,
} from '../../../../main/engine/index.ts'
import { en } from '../../../../renderer/app/words/en.ts'
import { pl } from '../../../../renderer/app/words/pl.ts'
import { explanations } from '../../../../renderer/app/words/pl/library/explanations.ts'
import { speak } from '../../../../renderer/app/words/i18n.ts'
import { batchAnswers, pour } from '../../batch/batch-page-fixture.ts'
import { status } from '../../cellar-fixture.ts'
import type { Answers } from '../../fake-bridge.ts'
import { fruitPage } from '../../fruits/fruit-page-fixture.ts'
import { backupState, noBackups } from '../../safekeeping/backups-fixture.ts'
import { keptPlan, purchases, season } from '../../season/season-fixture.ts'
import { shelfAnswers } from '../../shelf/shelf-fixture.ts'
import { showApp } from '../../show.tsx'
import { today } from '../../task-fixture.ts'
import { leavesOf } from './word-keys.ts'
import { usualSheets } from '../../../../main/papers/labels/usual-sheets.ts'

const spec = usualDraft({
  fruit: fruitOf('sour_cherry'),
  fruitG: 2000,
  spiritPctVol: 96,
  startAt: '2026-07-01T08:00:00.000Z',
})
const at = '2026-11-20T18:00:00.000Z'
const draft = { id: 'd1', name: 'D', spec, pins: [], note: '' }

const answers: Answers = {
  ...batchAnswers,
  ...shelfAnswers,
  ...season,
  'cellar.status': status({
    settings: {
      language: 'pl',
      locale: 'pl-PL',
      units: 'us',
      temperature: 'fahrenheit',
      strength: 'proof',
      currency: 'PLN',
      theme: 'light',
      reminders: false,
    },
  }),
  'today.list': today(),
  'season.lastPlan': keptPlan(),
  'purchases.list': purchases(),
  'drafts.list': [],
  'moves.list': {
    total: 1,
    years: [2026],
    rows: [{ recorded: pour.recorded, batchIds: ['damson'] }],
  },
  'drafts.page': { draft, createdAt: at, changedAt: at },
  'drafts.reckon': ({ spec: asked }) => outcomeOf(asked, { fruitOf }),
  'recipes.list': [],
  'fruits.list': [...fruitLibrary.values()],
  'fruits.origins': [],
  'fruits.page': fruitPage(),
  'bench.measure': (request) => measure(request),
  'labels.sheets': { usual: [...usualSheets], own: [] },
  'labels.style': {
    design: 'parlour',
    part: 'front',
    shown: ['name', 'strength'],
    hasCode: true,
    hasEmblem: true,
    hasCutMarks: false,
    strengthPrefix: 'none',
    sheetId: usualSheets[0]?.id ?? '',
  },
  'labels.usual': [],
  'backups.state': backupState(),
  'backups.list': noBackups,
}

const said = new Set(leavesOf(pl).values())
const english = new Set([...leavesOf(en).values()].filter((word) => !said.has(word)))

const explained = new Set(Object.values(explanations))

/** All that is read on the page, by eye or by a screen reader. */
function told(): string[] {
  const texts: string[] = []
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
  while (walk.nextNode()) texts.push(walk.currentNode.nodeValue?.trim() ?? '')
  for (const name of ['aria-label', 'placeholder', 'title'])
    for (const element of document.querySelectorAll(`[${name}]`))
      texts.push(element.getAttribute(name) ?? '')
  return texts.filter(Boolean).map((text) => text.replaceAll('\u00a0', ' '))
}

/** What the fixture's maker wrote, in English, stays so. */
const ownWords = new Set(['proof', 'Citric acid', 'Sugar', 'Damson', 'Raspberry'])

beforeAll(() => speak('pl'))
afterAll(() => speak('en'))

describe('every screen in Polish, in ounces, °F and proof', () => {
  it.each([
    '/today',
    '/batches',
    '/batches/damson',
    '/draft',
    '/draft/d1',
    '/marry',
    '/marry/mend',
    '/shelf',
    '/shelf/view/ageing',
    '/shelf/view/stock',
    '/shelf/view/places',
    '/shelf/raspberry-lot',
    '/season',
    '/season/wishes',
    '/season/fruit',
    '/season/buy',
    '/season/compare',
    '/bench/reduce',
    '/labels',
    '/cellar-room',
    '/fruits',
    '/fruits/sloe',
    '/safekeeping',
    '/moves',
    '/bring-in',
    '/handbook/cautions',
    '/nowhere',
  ])('%s says nothing in English, and no key', async (path) => {
    showApp(path, answers)
    await screen.findByRole('heading', { level: 1 })
    await waitFor(() => expect(screen.queryByText(pl.parts.loading)).toBeNull())
    expect(screen.queryAllByRole('alert').map((alert) => alert.textContent)).toEqual([])
    const texts = told()
    expect(texts.length).toBeGreaterThan(15)
    expect(texts.filter((text) => english.has(text) && !ownWords.has(text))).toEqual([])
    expect(texts.filter((text) => /\{\{|\b[a-z]\w*(?:\.[a-z]\w*){2,}\b/.test(text))).toEqual([])
    expect(texts.filter((text) => /\.\.(?!\.)/.test(text.replaceAll('...', '')))).toEqual([])
    // How the Bench computes is told in the units that its sources have.
    const measured = texts.filter(
      (text) => /\d (?:ml|kg|°C|% obj\.|% vol)(?!\w)/.test(text) && !explained.has(text),
    )
    expect(measured).toEqual([])
  })
})
