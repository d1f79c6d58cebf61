/** How fast the physics is: rates per second on one core, and the ratio to a plain evaluation. */
import {
  describeSolution,
  densityOfSpirit,
  massFractionOfDensity,
  strengthByBoilOff,
  strengthByTwoInstruments,
} from '../../main/engine/index.ts'
import { atTwenty, ofMixture, ofWater } from '../../main/engine/alcoholometry/oiml-coefficients.ts'

/** The formula as it stands on paper, with powers: what a spreadsheet cell does. */
function plainDensity(p: number, t: number): number {
  let density = 0
  atTwenty.forEach((a, k) => (density += a * p ** k))
  ofWater.forEach((b, k) => (density += b * (t - 20) ** (k + 1)))
  ofMixture.forEach((row, i) =>
    row.forEach((c, k) => (density += c * p ** (k + 1) * (t - 20) ** (i + 1))),
  )
  return density
}

/** Runs for a third of a second after warming up. The sum keeps the work from being left out. */
function ratePerSecond(work: (i: number) => number): number {
  let sum = 0
  for (let i = 0; i < 2000; i++) sum += work(i)
  const start = performance.now()
  let done = 0
  while (performance.now() - start < 330) {
    for (let i = 0; i < 500; i++) sum += work(done + i)
    done += 500
  }
  const rate = (1000 * done) / (performance.now() - start)
  if (!Number.isFinite(sum)) throw new Error('a calculation gave no number')
  return rate
}

const fraction = (i: number) => (i % 1000) / 1000
const temperature = (i: number) => 5 + (i % 31)

export function run(): void {
  const plain = ratePerSecond((i) => plainDensity(fraction(i), temperature(i)))
  const rates: readonly [string, number][] = [
    ['density of spirit, formula as printed', plain],
    [
      'density of spirit, any temperature',
      ratePerSecond((i) =>
        densityOfSpirit({ massFraction: fraction(i), temperatureC: temperature(i) }),
      ),
    ],
    [
      'density of spirit at 20 °C',
      ratePerSecond((i) => densityOfSpirit({ massFraction: fraction(i), temperatureC: 20 })),
    ],
    [
      'strength from density, any temperature',
      ratePerSecond((i) =>
        massFractionOfDensity({
          densityKgPerM3: 805 + (i % 1870) / 10,
          temperatureC: temperature(i),
        }),
      ),
    ],
    [
      'liqueur described from its grams',
      ratePerSecond(
        (i) =>
          describeSolution({ ethanolG: 200 + (i % 100), waterG: 500, sugarG: i % 400 })
            .strengthPctVol,
      ),
    ],
    [
      'strength by boil-off, with uncertainty',
      ratePerSecond(
        (i) =>
          strengthByBoilOff({
            densityBeforeKgPerM3: 980 + (i % 30),
            densityAfterKgPerM3: 1040 + (i % 40),
          }).strengthPctVol,
      ),
    ],
    [
      'strength by two instruments, with uncertainty',
      ratePerSecond(
        (i) =>
          strengthByTwoInstruments({ densityKgPerM3: 990 + (i % 40), brixReading: 24 + (i % 7) })
            .strengthPctVol,
      ),
    ],
  ]
  for (const [name, rate] of rates) {
    const ratio = (rate / plain).toFixed(2)
    console.log(
      `${name.padEnd(46)} ${Math.round(rate).toLocaleString('en').padStart(12)}/s  ${ratio} x printed`,
    )
  }
}
