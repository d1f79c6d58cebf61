/** Texts made to break out of a paper go through each of them, and stay texts. */
import ICAL from 'ical.js'
import papa from 'papaparse'
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs'
import { beforeAll, describe, expect, it } from 'vitest'
import { unzipSync, strFromU8 } from 'fflate'
import { readFileSync } from 'node:fs'
import type { Move } from '../../shared/schemas/moves.ts'
import { hostileTexts } from '../fuzz/hostile-texts.ts'
import { trial, withPantry, type Trial } from './with-service.ts'

/** As a name is kept: without the spaces around it. */
const names = hostileTexts.map((text) => text.slice(0, 120).trim()).filter((text) => text !== '')

/** What neither a calendar nor a paper can say: controls, lone halves of signs, marks of direction. */
const plain = (text: string) => text.toWellFormed().replaceAll(/[\p{Cc}\p{Cf}\p{Z}\ufffd]/gu, '')

/** Each text names a batch, its jar and its bottles, and is its note; fruit stands in the jar. */
async function hostileCellar(): Promise<Trial> {
  const t = await trial()
  await withPantry(t)
  const at = '2026-11-10T08:00:00Z'
  for (const [index, name] of names.entries()) {
    const [batchId, jarId] = [`batch-${index}`, `jar-${index}`]
    await t.ask('jars.add', {
      jars: [{ id: jarId, name, shape: 'jar', capacityMl: 500, isRetired: false }],
    })
    await t.ask('batches.open', { id: batchId, name, colour: '#4a2545', note: name, openedAt: at })
    const bottles = { bottleLotId: `lot-${index}`, bottleSizeMl: 200, count: 1 }
    const moves: Move[] = [
      { kind: 'charge', at, batchId, jarId, lotId: 'damsons', massG: 50, cut: 'whole', note: name },
      { kind: 'bringIn', at, batchId, ...bottles, strengthPctVol: 30, sugarGPerL: 200, name },
    ]
    await t.ask('moves.record', { key: `key-${index}`, moves })
  }
  return t
}

let t: Trial
beforeAll(async () => {
  t = await hostileCellar()
}, 120_000)

/** What a PDF could do by itself, beside being read. */
async function livelyParts(base64: string) {
  const data = new Uint8Array(Buffer.from(base64, 'base64'))
  const paper = await getDocument({ data, verbosity: 0 }).promise
  const annotations = []
  for (let page = 1; page <= paper.numPages; page += 1)
    annotations.push(...(await (await paper.getPage(page)).getAnnotations()))
  const { items } = await (await paper.getPage(1)).getTextContent()
  return {
    pages: paper.numPages,
    scripts: await paper.getJSActions(),
    onOpen: await paper.getOpenAction(),
    attachments: await paper.getAttachments(),
    annotations,
    text: items.map((item) => ('str' in item ? item.str : '')).join(' '),
  }
}
const lifeless = { scripts: null, onOpen: null, attachments: null, annotations: [] }

describe('hostile texts', () => {
  it('are one event each in the calendar, with nothing beside it', async () => {
    const { ics } = await t.ask('calendar.file', {})
    const calendar = new ICAL.Component(ICAL.parse(ics) as string)
    expect(calendar.getAllSubcomponents().map(({ name }) => name)).toEqual(
      calendar.getAllSubcomponents('vevent').map(() => 'vevent'),
    )
    const events = calendar.getAllSubcomponents('vevent')
    expect(events.flatMap((event) => event.getAllSubcomponents())).toEqual([])
    const properties = new Set(
      events.flatMap((event) => event.getAllProperties().map((p) => p.name)),
    )
    for (const name of properties)
      expect([
        'uid',
        'dtstamp',
        'dtstart',
        'dtend',
        'summary',
        'description',
        'sequence',
        'status',
        'last-modified',
        'created',
        'transp',
        'categories',
        'class',
        'url',
      ]).toContain(name)
    const told = events.map((event) => plain(String(event.getFirstPropertyValue('summary'))))
    for (const name of names)
      expect(
        told.some((summary) => summary.includes(plain(name))),
        name,
      ).toBe(true)
    // Lines as RFC 5545 has them: 75 octets at most, and no return or line feed alone.
    for (const line of ics.split('\r\n')) {
      expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75)
      expect(line).not.toMatch(/[\r\n]/)
    }
  })

  it('are printed on labels, and do nothing there', async () => {
    const bottleLotIds = names.map((_, index) => `lot-${index}`)
    const usual = await t.ask('labels.usual', { bottleLotIds, strengthPrefix: 'none' })
    expect(usual).toHaveLength(names.length)
    const { usual: sheets } = await t.ask('labels.sheets', {})
    const { strengthPrefix: _form, sheetId, ...style } = await t.ask('labels.style', {})
    const sheet = sheets.find(({ id }) => id === sheetId)
    if (!sheet) throw new Error('no sheet')
    const labels = usual.map(({ bottleLotId, colour, bottleSizeMl, text }) => ({
      bottleLotId,
      colour,
      bottleSizeMl,
      copies: 1,
      text: { ...text, note: text.name },
    }))
    const { pdfBase64 } = await t.ask('labels.paper', { ...style, sheet, firstPosition: 1, labels })
    const { pages, ...parts } = await livelyParts(pdfBase64)
    expect(parts).toMatchObject(lifeless)
    expect(pages).toBe(Math.ceil(names.length / (sheet.columns * sheet.rows)))
  })

  it('head a plan for the wall, and do nothing there', { timeout: 120_000 }, async () => {
    const usual = { fruitId: 'damson', massG: 500, spiritPctVol: 96 }
    const { spec } = await t.ask('drafts.usual', usual)
    for (const name of names) {
      const asked = { name, note: name, spec, size: 'A4' } as const
      const { fileName, pdfBase64 } = await t.ask('drafts.paper', asked)
      const { pages, text, ...parts } = await livelyParts(pdfBase64)
      expect(parts).toEqual(lifeless)
      expect(pages).toBeLessThanOrEqual(2)
      const isPlain = /^[\x20-\x7e]+$/.test(name)
      expect(text.replaceAll(/\s/g, '')).toContain(isPlain ? name.replaceAll(/\s/g, '') : '')
      // A file's name that no system takes for a path, a drive or a device.
      expect(fileName).not.toMatch(/[/\\:*?"<>|\p{Cc}]/u)
      expect(fileName).not.toMatch(/^\.|^(CON|PRN|AUX|NUL)\.pdf$/i)
    }
  })

  it('are cells that no spreadsheet runs, and read back as they were', async () => {
    await t.ask('exports.start', { jobId: 'out' })
    let job = await t.ask('backups.job', { jobId: 'out' })
    while (job.state === 'running') {
      await new Promise((resolve) => setTimeout(resolve, 50))
      job = await t.ask('backups.job', { jobId: 'out' })
    }
    if (!job.exported) throw new Error('nothing was exported')
    const files = Object.entries(unzipSync(readFileSync(job.exported.file)))
    const tables = files.filter(([name]) => name.endsWith('.csv'))
    expect(tables.length).toBeGreaterThan(5)
    const cells = tables.flatMap(([, bytes]) => papa.parse<string[]>(strFromU8(bytes)).data.flat())
    const texts = cells.filter((cell) => !Number.isFinite(Number(cell)))
    expect(texts.length).toBeGreaterThan(names.length)
    expect(texts.filter((cell) => /^\s*[=+\-@]/u.test(cell))).toEqual([])
    for (const name of names.map((text) => text.toWellFormed()))
      expect(
        cells.some((cell) => cell === name || cell === `'${name}`),
        name,
      ).toBe(true)
  })
})
