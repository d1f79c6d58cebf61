import * as z from 'zod'
import { TemperatureC, VolumeMl } from './basics.ts'

const DensityKgPerM3 = z.number().min(500).max(2000)
const Brix = z.number().min(-5).max(100)

/** What an instrument showed, kept raw: a better equation later reads the same numbers again. */
export const Reading = z.discriminatedUnion('instrument', [
  z.strictObject({
    instrument: z.literal('alcoholometer'),
    readingPctVol: z.number().min(-20).max(150),
    temperatureC: TemperatureC,
  }),
  z.strictObject({
    instrument: z.literal('hydrometer'),
    densityKgPerM3: DensityKgPerM3,
    temperatureC: TemperatureC,
  }),
  z.strictObject({
    instrument: z.literal('refractometer'),
    brix: Brix,
    temperatureC: TemperatureC,
  }),
  z.strictObject({
    instrument: z.literal('hydrometerAndRefractometer'),
    densityKgPerM3: DensityKgPerM3,
    brix: Brix,
    temperatureC: TemperatureC,
  }),
  z.strictObject({
    instrument: z.literal('boilOff'),
    densityBeforeKgPerM3: DensityKgPerM3,
    densityAfterKgPerM3: DensityKgPerM3,
    temperatureC: TemperatureC,
  }),
  z.strictObject({
    instrument: z.literal('measuringJug'),
    volumeMl: VolumeMl,
    temperatureC: TemperatureC,
  }),
])
export type Reading = z.infer<typeof Reading>
export type Instrument = Reading['instrument']

/** Why a reading is not believed until its maker confirms it. */
export const ReadingDoubt = z.enum([
  'outOfRange',
  'strongerThanAnythingPoured',
  'instrumentMisledBySugar',
  'noSuchMixture',
])
export type ReadingDoubt = z.infer<typeof ReadingDoubt>

/** What a reading means: the quantities that this instrument can tell, each with a standard uncertainty. */
export const Interpretation = z.strictObject({
  strengthPctVol: z.number().optional(),
  strengthUncertaintyPctVol: z.number().optional(),
  sugarGPerL: z.number().optional(),
  sugarUncertaintyGPerL: z.number().optional(),
  volumeMl: z.number().optional(),
  doubts: z.array(ReadingDoubt),
})
export type Interpretation = z.infer<typeof Interpretation>
