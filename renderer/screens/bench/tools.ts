/** The Bench's tools: in which order they lie, what each asks for, and what it begins with. */
import type { TermId } from '../../parts/term/terms.ts'
import { usualFineness } from '../../../shared/fineness.ts'
import type { BenchInputName, BenchInstrument, BenchNote } from '../../../shared/schemas/bench.ts'

export type ToolId =
  | 'reduce'
  | 'alcoholometer'
  | 'density-strength'
  | 'proof'
  | 'boil-off'
  | 'two-instruments'
  | 'sweeten'
  | 'apparent'
  | 'hydrometer'
  | 'refractometer'
  | 'weighing'
  | 'syrup'
  | 'volume'
  | 'glass'

export type InputLabel =
  | 'spiritVolume'
  | 'spiritMass'
  | 'resultVolume'
  | 'spiritStrength'
  | 'targetStrength'
  | 'reading'
  | 'sampleTemperature'
  | 'graduation'
  | 'volume'
  | 'strength'
  | 'sugar'
  | 'sugarNow'
  | 'targetSugar'
  | 'keepingTemperature'
  | 'density'
  | 'densityBefore'
  | 'densityAfter'
  | 'brix'
  | 'proof'
  | 'netMass'
  | 'flask'
  | 'waterMass'
  | 'waterTemperature'
  | 'liquidVolume'
  | 'glass'

export interface NumberSpec {
  readonly name: BenchInputName
  readonly label: InputLabel
  /** What stands in the field at first; left out where only an instrument can tell. */
  readonly start?: number
  readonly isOptional?: boolean
}

export type FineLabel =
  | 'jug'
  | 'scale'
  | 'label'
  | 'alcoholometer'
  | 'hydrometer'
  | 'refractometer'
  | 'thermometer'
  | 'waterThermometer'
  | 'flask'
  | 'scaleStep'
  | 'sugar'

export interface FineSpec {
  readonly name: BenchInputName
  readonly label: FineLabel
  /** Of this kind of instrument; a share of the number itself where so many of it are read. */
  readonly usual: number | { readonly share: number }
}

/** One way to use a tool: one instrument of the contract. */
export interface Mode {
  readonly instrument: BenchInstrument
  readonly numbers: readonly NumberSpec[]
  readonly fine: readonly FineSpec[]
  readonly asksLiquid?: true
  readonly asksCompensation?: true
}

export interface Tool {
  readonly id: ToolId
  /** Explained beside its name. */
  readonly term?: TermId
  readonly modes: readonly [Mode, ...Mode[]]
  /** How it is done, where a number or two do not say it. */
  readonly steps?: 'boilOff' | 'weighing'
  /** Said beside the steps before anything is done, whatever the numbers. */
  readonly care?: BenchNote['code']
}

const twenty = { name: 'temperatureC', label: 'sampleTemperature', start: 20 } as const
const thermometer = {
  name: 'temperatureC',
  label: 'thermometer',
  usual: usualFineness.thermometerC,
} as const
const hydrometer = {
  name: 'densityKgPerM3',
  label: 'hydrometer',
  usual: usualFineness.hydrometerKgPerM3,
} as const
const refractometer = {
  name: 'brix',
  label: 'refractometer',
  usual: usualFineness.refractometerBrix,
} as const
const label = { name: 'strengthPctVol', label: 'label', usual: usualFineness.labelPctVol } as const
const jug = { name: 'volumeMl', label: 'jug', usual: { share: usualFineness.jugShare } } as const
const sugarKnown = { name: 'sugarGPerL', label: 'sugar', usual: usualFineness.sugarGPerL } as const
const scaleStep = {
  name: 'scaleStepG',
  label: 'scaleStep',
  usual: usualFineness.scaleStepG,
} as const

const spiritStrength = { name: 'strengthPctVol', label: 'spiritStrength', start: 96 } as const
const targetStrength = { name: 'targetPctVol', label: 'targetStrength', start: 40 } as const

export const tools: readonly [Tool, ...Tool[]] = [
  {
    id: 'reduce',
    term: 'contraction',
    modes: [
      {
        instrument: 'reduceByVolume',
        numbers: [
          { name: 'volumeMl', label: 'spiritVolume', start: 1000 },
          spiritStrength,
          targetStrength,
        ],
        fine: [jug, label],
      },
      {
        instrument: 'reduceByWeight',
        numbers: [
          { name: 'massG', label: 'spiritMass', start: 1000 },
          spiritStrength,
          targetStrength,
        ],
        fine: [{ name: 'massG', label: 'scale', usual: usualFineness.scaleG }, label],
      },
      {
        instrument: 'reduceToVolume',
        numbers: [
          { name: 'resultMl', label: 'resultVolume', start: 1000 },
          spiritStrength,
          targetStrength,
        ],
        fine: [{ name: 'resultMl', label: 'jug', usual: { share: usualFineness.jugShare } }, label],
      },
    ],
  },
  {
    id: 'alcoholometer',
    term: 'strength',
    modes: [
      {
        instrument: 'alcoholometer',
        numbers: [{ name: 'readingPctVol', label: 'reading' }, twenty],
        fine: [
          {
            name: 'readingPctVol',
            label: 'alcoholometer',
            usual: usualFineness.alcoholometerPctVol,
          },
          thermometer,
        ],
      },
    ],
  },
  {
    id: 'density-strength',
    term: 'density',
    modes: [
      {
        instrument: 'densityToStrength',
        numbers: [{ name: 'densityKgPerM3', label: 'density' }, twenty],
        fine: [hydrometer, thermometer],
      },
      {
        instrument: 'strengthToDensity',
        numbers: [{ name: 'strengthPctVol', label: 'strength' }, twenty],
        fine: [label, thermometer],
      },
    ],
  },
  {
    id: 'proof',
    term: 'proof',
    modes: [
      {
        instrument: 'proofToStrength',
        numbers: [{ name: 'proof', label: 'proof' }],
        fine: [{ name: 'proof', label: 'label', usual: 2 * usualFineness.labelPctVol }],
      },
      {
        instrument: 'strengthToProof',
        numbers: [{ name: 'strengthPctVol', label: 'strength' }],
        fine: [label],
      },
      {
        instrument: 'proofHydrometer',
        numbers: [{ name: 'proof', label: 'reading' }, { ...twenty }],
        fine: [
          {
            name: 'proof',
            label: 'alcoholometer',
            usual: 2 * usualFineness.alcoholometerPctVol,
          },
          thermometer,
        ],
      },
    ],
  },
  {
    id: 'boil-off',
    care: 'boilOffCare',
    steps: 'boilOff',
    modes: [
      {
        instrument: 'boilOff',
        numbers: [
          { name: 'densityBeforeKgPerM3', label: 'densityBefore' },
          { name: 'densityAfterKgPerM3', label: 'densityAfter' },
          twenty,
        ],
        fine: [{ ...hydrometer, name: 'densityBeforeKgPerM3' }, thermometer],
      },
    ],
  },
  {
    id: 'two-instruments',
    modes: [
      {
        instrument: 'hydrometerAndRefractometer',
        numbers: [
          { name: 'densityKgPerM3', label: 'density' },
          { name: 'brix', label: 'brix' },
          twenty,
        ],
        fine: [hydrometer, refractometer, thermometer],
      },
    ],
  },
  {
    id: 'sweeten',
    modes: [
      {
        instrument: 'sweeten',
        numbers: [
          { name: 'volumeMl', label: 'liquidVolume', start: 1000 },
          { name: 'strengthPctVol', label: 'strength', start: 40 },
          { name: 'sugarGPerL', label: 'sugarNow', start: 0 },
          { name: 'targetSugarGPerL', label: 'targetSugar', start: 200 },
          { name: 'temperatureC', label: 'keepingTemperature', start: 15 },
        ],
        fine: [jug, label],
      },
    ],
  },
  {
    id: 'apparent',
    term: 'apparent',
    modes: [
      {
        instrument: 'apparentStrength',
        numbers: [
          { name: 'strengthPctVol', label: 'strength', start: 40 },
          { name: 'sugarGPerL', label: 'sugar', start: 100 },
          twenty,
        ],
        fine: [label, sugarKnown, thermometer],
      },
    ],
  },
  {
    id: 'hydrometer',
    modes: [
      {
        instrument: 'hydrometer',
        numbers: [
          { name: 'densityKgPerM3', label: 'reading' },
          twenty,
          { name: 'graduatedAtC', label: 'graduation', start: 20 },
        ],
        fine: [hydrometer, thermometer],
        asksLiquid: true,
      },
    ],
  },
  {
    id: 'refractometer',
    term: 'brix',
    modes: [
      {
        instrument: 'refractometer',
        numbers: [{ name: 'brix', label: 'reading' }, twenty],
        fine: [refractometer, thermometer],
        asksCompensation: true,
      },
    ],
  },
  {
    id: 'weighing',
    steps: 'weighing',
    modes: [
      {
        instrument: 'weighing',
        numbers: [
          { name: 'massG', label: 'netMass' },
          { name: 'volumeMl', label: 'flask', start: 100 },
          twenty,
        ],
        fine: [
          scaleStep,
          { name: 'volumeMl', label: 'flask', usual: { share: usualFineness.flaskShare } },
          thermometer,
        ],
        asksLiquid: true,
      },
      {
        instrument: 'weighingByWater',
        numbers: [
          { name: 'massG', label: 'netMass' },
          { name: 'waterG', label: 'waterMass' },
          { name: 'waterTemperatureC', label: 'waterTemperature', start: 20 },
          twenty,
        ],
        fine: [
          scaleStep,
          {
            name: 'waterTemperatureC',
            label: 'waterThermometer',
            usual: usualFineness.thermometerC,
          },
          thermometer,
        ],
        asksLiquid: true,
      },
    ],
  },
  {
    id: 'syrup',
    modes: [
      {
        instrument: 'syrupOfBrix',
        numbers: [{ name: 'brix', label: 'brix', start: 60 }, twenty],
        fine: [refractometer, thermometer],
      },
      {
        instrument: 'syrupOfDensity',
        numbers: [{ name: 'densityKgPerM3', label: 'density' }, twenty],
        fine: [hydrometer, thermometer],
      },
      {
        instrument: 'syrupOfSugar',
        numbers: [{ name: 'sugarGPerL', label: 'sugar' }, twenty],
        fine: [sugarKnown, thermometer],
      },
    ],
  },
  {
    id: 'volume',
    modes: [
      {
        instrument: 'volumeAt20',
        numbers: [
          { name: 'volumeMl', label: 'volume', start: 1000 },
          { ...twenty, start: 12 },
          { name: 'strengthPctVol', label: 'strength', start: 40 },
          { name: 'sugarGPerL', label: 'sugar', isOptional: true },
        ],
        fine: [jug, thermometer],
      },
    ],
  },
  {
    id: 'glass',
    modes: [
      {
        instrument: 'glass',
        numbers: [
          { name: 'volumeMl', label: 'glass', start: 40 },
          { name: 'strengthPctVol', label: 'strength', start: 30 },
          { name: 'sugarGPerL', label: 'sugar', start: 200 },
        ],
        fine: [jug, label, sugarKnown],
      },
    ],
  },
]

export type ToolGroup = 'sweet' | 'spirit' | 'density' | 'jug'

export const toolGroups: readonly { group: ToolGroup; tools: readonly ToolId[] }[] = [
  { group: 'spirit', tools: ['reduce', 'alcoholometer', 'density-strength', 'proof'] },
  { group: 'sweet', tools: ['boil-off', 'two-instruments', 'sweeten', 'apparent'] },
  { group: 'density', tools: ['hydrometer', 'refractometer', 'weighing', 'syrup'] },
  { group: 'jug', tools: ['volume', 'glass'] },
]

export const toolOf = (id: string | undefined): Tool =>
  tools.find((tool) => tool.id === id) ?? tools[0]
