/**
 * How fast a spreadsheet works out the same density formula, in the same run as the engine. A macro
 * inside LibreOffice times its own recalculation of 20,000 rows, so that neither starting up nor
 * reading the sheet counts; what it calculated is compared with the engine, cell by cell.
 */
import { execFile } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { densityOfSpirit } from '../../main/engine/index.ts'
import { atTwenty, ofMixture, ofWater } from '../../main/engine/alcoholometry/oiml-coefficients.ts'

const runProgram = promisify(execFile)
const rows = 20_000
const repeats = 5
const limit = { timeout: 180_000 }

const fraction = (i: number) => ((i * 7919) % rows) / rows
const temperature = (i: number) => 5 + (i % 31)
const density = (i: number) =>
  densityOfSpirit({ massFraction: fraction(i), temperatureC: temperature(i) })

/** Nested as the engine has it, so that neither side is given needless powers. */
const nested = (terms: readonly number[], x: string): string =>
  terms.reduceRight((inner, term) => (inner === '' ? `${term}` : `${term}+${x}*(${inner})`), '')

function formulaOf(row: number): string {
  const [p, t] = [`[.A${row}]`, `([.B${row}]-20)`]
  const mixture = ofMixture.map((terms) => `${p}*(${nested(terms, p)})`)
  const ofTemperature = ofWater.map((term, i) => `(${term}${mixture[i] ? `+${mixture[i]}` : ''})`)
  const inTemperature = ofTemperature.reduceRight(
    (inner, term) => (inner === '' ? term : `${term}+${t}*(${inner})`),
    '',
  )
  return `of:=${nested(atTwenty, p)}+${t}*(${inTemperature})`
}

const cell = (value: number): string =>
  `<table:table-cell office:value-type="float" office:value="${value}"/>`

function sheet(): string {
  const lines = Array.from({ length: rows }, (_, i) => {
    const formula = `<table:table-cell table:formula="${formulaOf(i + 1)}"/>`
    return `<table:table-row>${cell(fraction(i))}${cell(temperature(i))}${formula}</table:table-row>`
  })
  return `<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0"
 xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0"
 xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.3"
 office:mimetype="application/vnd.oasis.opendocument.spreadsheet">
<office:body><office:spreadsheet><table:table table:name="density">
${lines.join('\n')}
</table:table></office:spreadsheet></office:body></office:document>`
}

/** Writes the milliseconds of each recalculation, then every result, one a line. */
const macro = (folder: string) => `Sub Main
  Dim hidden(0) As New com.sun.star.beans.PropertyValue
  hidden(0).Name = "Hidden"
  hidden(0).Value = True
  book = StarDesktop.loadComponentFromURL("file://${folder}/sheet.fods", "_blank", 0, hidden())
  out = FreeFile
  Open "${folder}/results.txt" For Output As #out
  For i = 1 To ${repeats}
    started = GetSystemTicks()
    book.calculateAll()
    Print #out, GetSystemTicks() - started
  Next i
  cells = book.Sheets.getByIndex(0).getCellRangeByPosition(2, 0, 2, ${rows - 1}).getDataArray()
  For i = 0 To ${rows - 1}
    Print #out, Str(cells(i)(0))
  Next i
  Close #out
  book.close(True)
  StarDesktop.terminate()
End Sub`

const page = (type: string, body: string): string =>
  `<?xml version="1.0" encoding="UTF-8"?>
<!DOCTYPE ${type} PUBLIC "-//OpenOffice.org//DTD OfficeDocument 1.0//EN" "${type.split(':')[1]}.dtd">
${body}`

/** Puts the macro into a profile's own library; the first start has made that library. */
function writeMacro(folder: string): void {
  const library = join(folder, 'profile', 'user', 'basic', 'Standard')
  const text = macro(folder).replaceAll('&', '&amp;').replaceAll('<', '&lt;')
  const module = `<script:module xmlns:script="http://openoffice.org/2000/script" script:name="Density" script:language="StarBasic">${text}</script:module>`
  const held = `<library:library xmlns:library="http://openoffice.org/2000/library" library:name="Standard" library:readonly="false" library:passwordprotected="false"><library:element library:name="Density"/></library:library>`
  writeFileSync(join(library, 'Density.xba'), page('script:module', module))
  writeFileSync(join(library, 'script.xlb'), page('library:library', held))
}

async function findProgram(): Promise<string | undefined> {
  for (const name of ['soffice', 'libreoffice'])
    try {
      await runProgram(name, ['--version'])
      return name
    } catch {
      // Not there under this name.
    }
  return undefined
}

/** Milliseconds of the fastest pass: anything else on the machine only ever slows one down. */
function engineMs(): number {
  let best = Number.POSITIVE_INFINITY
  for (let pass = 0; pass < repeats; pass++) {
    let sum = 0
    const started = performance.now()
    for (let i = 0; i < rows; i++) sum += density(i)
    best = Math.min(best, performance.now() - started)
    if (!Number.isFinite(sum)) throw new Error('a density is no number')
  }
  return best
}

export async function run(): Promise<void> {
  const program = await findProgram()
  if (!program) {
    console.log('skipped: no LibreOffice here (Debian: apt-get install libreoffice-calc)')
    return
  }
  const folder = mkdtempSync(join(tmpdir(), 'ratafia-bench-'))
  try {
    writeFileSync(join(folder, 'sheet.fods'), sheet())
    const start = [`-env:UserInstallation=file://${join(folder, 'profile')}`, '--headless']
    await runProgram(program, [...start, '--terminate_after_init'], limit)
    writeMacro(folder)
    await runProgram(program, [...start, 'macro:///Standard.Density.Main'], limit)
    tell(readFileSync(join(folder, 'results.txt'), 'utf8').trim().split(/\s+/).map(Number))
  } finally {
    rmSync(folder, { recursive: true })
  }
}

function tell(lines: readonly number[]): void {
  const [times, results] = [lines.slice(0, repeats), lines.slice(repeats)]
  const worst = Math.max(...results.map((result, i) => Math.abs(result - density(i))))
  if (results.length !== rows || !(worst < 1e-6))
    throw new Error(`${results.length} densities of the sheet, off by ${worst} kg/m³`)
  const sheetMs = Math.min(...times)
  const ours = engineMs()
  line('20,000 densities, LibreOffice Calc recalculates', `${sheetMs} ms (of ${times.join(', ')})`)
  line('20,000 densities, engine', `${ours.toFixed(2)} ms`)
  line('greatest difference between the two', `${worst.toExponential(1)} kg/m³`)
  line('ratio', `${(sheetMs / ours).toFixed(0)} times`)
}

const line = (name: string, value: string): void => console.log(`${name.padEnd(48)} ${value}`)
