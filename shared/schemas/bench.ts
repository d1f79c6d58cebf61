/**
 * The Bench: one request an instrument, and one form of answer for all of them. Numbers come as
 * they were read; whether they can be is judged by the engine, which names the range it allows.
 */
import * as z from 'zod'
import { Reading } from './readings.ts'

const number = z.number()

/** What a number on the Bench is of; the base unit of each is in the comment. */
export const BenchDimension = z.enum([
  'volume', // ml
  'mass', // g
  'strength', // % vol at 20 °C
  'sugar', // g/L at 20 °C
  'density', // kg/m³
  'brix', // °Bx
  'temperature', // °C
  'proof', // twice the % vol at 60 °F
  'massShare', // % by mass
  'energyKj', // kJ
  'energyKcal', // kcal
  'drinks', // pieces
])
export type BenchDimension = z.infer<typeof BenchDimension>

/** Every number that some instrument of the Bench asks for. */
export const benchInputs = {
  volumeMl: 'volume',
  resultMl: 'volume',
  massG: 'mass',
  waterG: 'mass',
  scaleStepG: 'mass',
  strengthPctVol: 'strength',
  targetPctVol: 'strength',
  readingPctVol: 'strength',
  sugarGPerL: 'sugar',
  targetSugarGPerL: 'sugar',
  densityKgPerM3: 'density',
  densityBeforeKgPerM3: 'density',
  densityAfterKgPerM3: 'density',
  brix: 'brix',
  proof: 'proof',
  temperatureC: 'temperature',
  graduatedAtC: 'temperature',
  waterTemperatureC: 'temperature',
} as const satisfies Record<string, BenchDimension>
export type BenchInputName = keyof typeof benchInputs

/** How fine each number reads: one standard uncertainty, in the number's own unit. */
const fineness = <Name extends BenchInputName>(...names: readonly Name[]) => {
  const fine = z.number().positive().max(1e6).optional()
  const shape = Object.fromEntries(names.map((name) => [name, fine]))
  return z.strictObject(shape as Record<Name, typeof fine>).optional()
}

/** What is in the liquid, which decides what its density means. */
export const BenchLiquid = z.enum(['spirit', 'syrup', 'other'])
export type BenchLiquid = z.infer<typeof BenchLiquid>

const reduction = { strengthPctVol: number, targetPctVol: number }

export const BenchRequest = z.discriminatedUnion('instrument', [
  z.strictObject({
    instrument: z.literal('reduceByVolume'),
    volumeMl: number,
    ...reduction,
    fineness: fineness('volumeMl', 'strengthPctVol'),
  }),
  z.strictObject({
    instrument: z.literal('reduceByWeight'),
    massG: number,
    ...reduction,
    fineness: fineness('massG', 'strengthPctVol'),
  }),
  z.strictObject({
    instrument: z.literal('reduceToVolume'),
    resultMl: number,
    ...reduction,
    fineness: fineness('resultMl', 'strengthPctVol'),
  }),
  z.strictObject({
    instrument: z.literal('alcoholometer'),
    readingPctVol: number,
    temperatureC: number,
    fineness: fineness('readingPctVol', 'temperatureC'),
  }),
  z.strictObject({
    instrument: z.literal('hydrometer'),
    densityKgPerM3: number,
    temperatureC: number,
    /** 20 °C when left out. */
    graduatedAtC: number.optional(),
    liquid: BenchLiquid,
    fineness: fineness('densityKgPerM3', 'temperatureC'),
  }),
  z.strictObject({
    instrument: z.literal('refractometer'),
    brix: number,
    temperatureC: number,
    /** True for one that corrects for temperature by itself. */
    isCompensated: z.boolean(),
    fineness: fineness('brix', 'temperatureC'),
  }),
  z.strictObject({
    instrument: z.literal('volumeAt20'),
    volumeMl: number,
    temperatureC: number,
    /** Water when both are left out. */
    strengthPctVol: number.optional(),
    sugarGPerL: number.optional(),
    fineness: fineness('volumeMl', 'temperatureC'),
  }),
  z.strictObject({
    instrument: z.literal('proofToStrength'),
    proof: number,
    fineness: fineness('proof'),
  }),
  z.strictObject({
    instrument: z.literal('strengthToProof'),
    strengthPctVol: number,
    fineness: fineness('strengthPctVol'),
  }),
  z.strictObject({
    instrument: z.literal('proofHydrometer'),
    proof: number,
    temperatureC: number,
    fineness: fineness('proof', 'temperatureC'),
  }),
  z.strictObject({
    instrument: z.literal('densityToStrength'),
    densityKgPerM3: number,
    temperatureC: number,
    fineness: fineness('densityKgPerM3', 'temperatureC'),
  }),
  z.strictObject({
    instrument: z.literal('strengthToDensity'),
    strengthPctVol: number,
    temperatureC: number,
    fineness: fineness('strengthPctVol', 'temperatureC'),
  }),
  z.strictObject({
    instrument: z.literal('syrupOfBrix'),
    brix: number,
    temperatureC: number,
    fineness: fineness('brix', 'temperatureC'),
  }),
  z.strictObject({
    instrument: z.literal('syrupOfDensity'),
    densityKgPerM3: number,
    temperatureC: number,
    fineness: fineness('densityKgPerM3', 'temperatureC'),
  }),
  z.strictObject({
    instrument: z.literal('syrupOfSugar'),
    sugarGPerL: number,
    temperatureC: number,
    fineness: fineness('sugarGPerL', 'temperatureC'),
  }),
  z.strictObject({
    instrument: z.literal('apparentStrength'),
    strengthPctVol: number,
    sugarGPerL: number,
    temperatureC: number,
    fineness: fineness('strengthPctVol', 'sugarGPerL', 'temperatureC'),
  }),
  z.strictObject({
    instrument: z.literal('boilOff'),
    densityBeforeKgPerM3: number,
    densityAfterKgPerM3: number,
    temperatureC: number,
    /** One hydrometer for both densities. */
    fineness: fineness('densityBeforeKgPerM3', 'temperatureC'),
  }),
  z.strictObject({
    instrument: z.literal('hydrometerAndRefractometer'),
    densityKgPerM3: number,
    brix: number,
    temperatureC: number,
    fineness: fineness('densityKgPerM3', 'brix', 'temperatureC'),
  }),
  z.strictObject({
    instrument: z.literal('weighing'),
    massG: number,
    volumeMl: number,
    temperatureC: number,
    liquid: BenchLiquid,
    fineness: fineness('scaleStepG', 'volumeMl', 'temperatureC'),
  }),
  /** The flask's volume is learnt from the weight of the water that fills it. */
  z.strictObject({
    instrument: z.literal('weighingByWater'),
    massG: number,
    waterG: number,
    waterTemperatureC: number,
    temperatureC: number,
    liquid: BenchLiquid,
    fineness: fineness('scaleStepG', 'waterTemperatureC', 'temperatureC'),
  }),
  z.strictObject({
    instrument: z.literal('sweeten'),
    volumeMl: number,
    strengthPctVol: number,
    sugarGPerL: number.optional(),
    targetSugarGPerL: number,
    /** At which the sugar is to stay dissolved. */
    temperatureC: number,
    fineness: fineness('volumeMl', 'strengthPctVol', 'sugarGPerL'),
  }),
  z.strictObject({
    instrument: z.literal('glass'),
    volumeMl: number,
    strengthPctVol: number,
    sugarGPerL: number,
    fineness: fineness('volumeMl', 'strengthPctVol', 'sugarGPerL'),
  }),
])
export type BenchRequest = z.infer<typeof BenchRequest>
export type BenchInstrument = BenchRequest['instrument']
export type BenchRequestOf<I extends BenchInstrument> = Extract<BenchRequest, { instrument: I }>

export const BenchQuantity = z.enum([
  'water',
  'waterMass',
  'spirit',
  'result',
  'resultMass',
  'contraction',
  'strengthReached',
  'strength',
  'shownStrength',
  'density',
  'densityAt20',
  'offScale',
  'massShare',
  'brix',
  'sugar',
  'volumeAt20',
  'volumeAt60F',
  'volumeChange',
  'proof',
  'flask',
  'sugarToAdd',
  'sugarRoom',
  'strengthAfter',
  'ethanolMass',
  'energyKj',
  'energyKcal',
  'drinksUnitedKingdom',
  'drinksUnitedStates',
  'drinksAustralia',
])
export type BenchQuantity = z.infer<typeof BenchQuantity>

export const BenchResult = z.strictObject({
  quantity: BenchQuantity,
  dimension: BenchDimension,
  value: z.number(),
  /** One standard uncertainty, in the same unit. */
  uncertainty: z.number().optional(),
  /** What was asked for; the others say more about it. */
  isAnswer: z.boolean(),
})
export type BenchResult = z.infer<typeof BenchResult>

/** What should be seen beside the answer, with the number that raised it where there is one. */
export const BenchNote = z.strictObject({
  code: z.enum([
    'strongSpirit',
    'boilOffCare',
    'notLegalAdvice',
    'straightRule',
    'sugarMisleads',
    'spiritMisleads',
    'sinksOffScale',
    'floatsOffScale',
    'shortcutErrs',
    'atTheEdge',
    'undissolved',
    'glassOnly',
  ]),
  value: z.number().optional(),
  dimension: BenchDimension.optional(),
})
export type BenchNote = z.infer<typeof BenchNote>

/** How a result was come by, kept beside the function that gives it. The id is for translators. */
export const Explanation = z.strictObject({
  id: z.string(),
  method: z.string(),
  source: z.string(),
  limits: z.string(),
  uncertainty: z.string(),
})
export type Explanation = z.infer<typeof Explanation>

/** All liquids that would show one instrument what it showed: the sugar at each strength. */
const SightLine = z.array(
  z.strictObject({
    strengthPctVol: z.number(),
    sugarGPerL: z.number(),
    /** Where the instrument would show one uncertainty less, and more. */
    lowGPerL: z.number(),
    highGPerL: z.number(),
  }),
)
export type SightLine = z.infer<typeof SightLine>

export const BenchPicture = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('dilution'),
    spiritMl: z.number(),
    spiritPctVol: z.number(),
    waterMl: z.number(),
    resultMl: z.number(),
    resultPctVol: z.number(),
    contractionMl: z.number(),
  }),
  z.strictObject({ kind: z.literal('crossing'), density: SightLine, refraction: SightLine }),
])
export type BenchPicture = z.infer<typeof BenchPicture>

export const LegalCategory = z.enum([
  'liqueur',
  'cherryLiqueurOfCherrySpirit',
  'gentianLiqueur',
  'cremeDe',
  'cremeDeCassis',
  'sloeGin',
  'sloeAromatisedSpirit',
  'maraschino',
  'nocino',
  'americanLiqueur',
])
export type LegalCategory = z.infer<typeof LegalCategory>

export const CategoryVerdict = z.strictObject({
  category: LegalCategory,
  isMet: z.boolean(),
  missingPctVol: z.number(),
  missingInvertGPerL: z.number(),
  excessInvertGPerL: z.number(),
  /** Read in a public copy of the law, at second hand, or remembered. */
  standing: z.enum(['read', 'secondHand', 'remembered']),
})
export type CategoryVerdict = z.infer<typeof CategoryVerdict>

const inputNames = Object.keys(benchInputs) as [BenchInputName, ...BenchInputName[]]

export const BenchReply = z.strictObject({
  /** The numbers as they were taken, with how fine each was held to be; exact where none is said. */
  inputs: z.array(
    z.strictObject({
      name: z.enum(inputNames),
      value: z.number(),
      uncertainty: z.number().optional(),
    }),
  ),
  results: z.array(BenchResult),
  notes: z.array(BenchNote),
  /** The method asked for first, then those it stands on. */
  explanations: z.array(Explanation).min(1),
  picture: BenchPicture.optional(),
  categories: z.array(CategoryVerdict).optional(),
  /** What to record into a batch, where this is a reading of one. */
  reading: Reading.optional(),
})
export type BenchReply = z.infer<typeof BenchReply>
