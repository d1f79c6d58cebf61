/** Words of the Bench. Amounts come in formatted; how a result is computed comes with the result. */
import type {
  BenchInputName,
  BenchInstrument,
  BenchLiquid,
  BenchNote,
  BenchQuantity,
  CategoryVerdict,
  LegalCategory,
} from '../../../../shared/schemas/bench.ts'
import type { FineLabel, InputLabel, ToolGroup, ToolId } from '../../../screens/bench/tools.ts'

const group = {
  spirit: 'Spirit and water',
  sweet: 'Sweet liquids',
  density: 'Density and sugar',
  jug: 'Jug and glass',
} as const satisfies Record<ToolGroup, string>

/** `name` as it stands in the list, `what` under the heading. */
const tool = {
  reduce: {
    name: 'Reduce spirit',
    what: 'How much water brings a spirit down to the strength you want, and how much that makes.',
  },
  alcoholometer: {
    name: 'Alcoholometer',
    what: 'What the reading is at {{standard}}. For spirit without sugar.',
  },
  'density-strength': {
    name: 'Density and strength',
    what: 'The tables of spirit, both ways, at any temperature.',
  },
  proof: {
    name: 'Proof',
    what: 'American proof is counted at 60 °F, strength by volume elsewhere at {{standard}}.',
  },
  'boil-off': {
    name: 'Boil-off',
    what: 'The true strength and sugar of a liqueur, with a hydrometer and a pan.',
  },
  'two-instruments': {
    name: 'Hydrometer and refractometer',
    what: 'The true strength and sugar of a liqueur from two quick readings of it.',
  },
  sweeten: {
    name: 'Sweeten',
    what: 'How much sugar brings a liquid to the sweetness you want, and how strong it then is.',
  },
  apparent: {
    name: 'Alcoholometer in a liqueur',
    what: 'What an alcoholometer shows in a sweet liquid: far too little, or nothing.',
  },
  hydrometer: {
    name: 'Hydrometer',
    what: 'The reading put right for temperature, and what it means if you know what is in the liquid.',
  },
  refractometer: {
    name: 'Refractometer',
    what: 'The reading put right for temperature, for sugar in water or juice.',
  },
  weighing: {
    name: 'Flask on a scale',
    what: 'A kitchen scale as a hydrometer: weigh a known volume.',
  },
  syrup: {
    name: 'Syrup',
    what: 'Degrees Brix, density and grams of sugar in a litre, one from the other.',
  },
  volume: {
    name: 'Volume and warmth',
    what: 'What a volume measured warm or cold is at the {{standard}} by which liquids are counted.',
  },
  glass: {
    name: 'In the glass',
    what: 'Standard drinks, energy, and which names the law would let it bear.',
  },
} as const satisfies Record<ToolId, { name: string; what: string }>

/** Ways to use a tool that has several. */
const mode = {
  reduceByVolume: 'I have a volume',
  reduceByWeight: 'I have a weight',
  reduceToVolume: 'I want a volume',
  alcoholometer: 'Alcoholometer',
  hydrometer: 'Hydrometer',
  refractometer: 'Refractometer',
  volumeAt20: 'Volume',
  proofToStrength: 'Proof to % vol',
  strengthToProof: '% vol to proof',
  proofHydrometer: 'Proof hydrometer',
  densityToStrength: 'Density to strength',
  strengthToDensity: 'Strength to density',
  syrupOfBrix: 'From °Bx',
  syrupOfDensity: 'From density',
  syrupOfSugar: 'From g/L',
  apparentStrength: 'In a liqueur',
  boilOff: 'Boil-off',
  hydrometerAndRefractometer: 'Both',
  weighing: 'Marked flask',
  weighingByWater: 'Any bottle, filled with water first',
  sweeten: 'Sweeten',
  glass: 'Glass',
} as const satisfies Record<BenchInstrument, string>

const input = {
  spiritVolume: 'Spirit, at {{standard}}',
  spiritMass: 'Spirit, weighed',
  resultVolume: 'Wanted, at {{standard}}',
  spiritStrength: 'Its strength',
  targetStrength: 'Strength wanted',
  reading: 'It shows',
  sampleTemperature: 'Temperature of the sample',
  graduation: 'Made for, as written on its scale',
  volume: 'Measured volume',
  strength: 'Strength',
  sugar: 'Sugar',
  sugarNow: 'Sugar in it now',
  targetSugar: 'Sugar wanted',
  keepingTemperature: 'Kept at',
  density: 'Hydrometer shows',
  densityBefore: 'Hydrometer before boiling',
  densityAfter: 'Hydrometer after, made up to the same volume',
  brix: 'Refractometer shows',
  proof: 'Proof',
  netMass: 'Weight of the liquid alone',
  flask: 'Volume of the flask',
  waterMass: 'Weight of the water that fills it',
  waterTemperature: 'Temperature of that water',
  liquidVolume: 'Liquid, at {{standard}}',
  glass: 'Poured',
} as const satisfies Record<InputLabel, string>

/** The numbers as they were taken, under “How is this computed?”. */
const taken = {
  volumeMl: 'Volume',
  resultMl: 'Volume wanted',
  massG: 'Weight',
  waterG: 'Weight of water',
  scaleStepG: 'Last digit of the scale',
  strengthPctVol: 'Strength',
  targetPctVol: 'Strength wanted',
  readingPctVol: 'Alcoholometer',
  sugarGPerL: 'Sugar',
  targetSugarGPerL: 'Sugar wanted',
  densityKgPerM3: 'Hydrometer',
  densityBeforeKgPerM3: 'Hydrometer before',
  densityAfterKgPerM3: 'Hydrometer after',
  brix: 'Refractometer',
  proof: 'Proof',
  temperatureC: 'Temperature',
  graduatedAtC: 'Made for',
  waterTemperatureC: 'Temperature of the water',
} as const satisfies Record<BenchInputName, string>

const fine = {
  jug: 'Jug',
  scale: 'Scale',
  label: 'Strength as known',
  alcoholometer: 'Its scale',
  hydrometer: 'Hydrometer',
  refractometer: 'Refractometer',
  thermometer: 'Thermometer',
  waterThermometer: 'Thermometer, in the water',
  flask: 'Flask’s mark',
  scaleStep: 'Last digit of the scale',
  sugar: 'Sugar as known',
} as const satisfies Record<FineLabel, string>

const quantity = {
  water: 'Water to add',
  waterMass: 'or by weight',
  spirit: 'Spirit to take',
  result: 'Makes',
  resultMass: 'Makes, by weight',
  contraction: 'Lost to contraction',
  strengthReached: 'Strength reached',
  strength: 'Strength',
  shownStrength: 'It shows',
  density: 'Density at its temperature',
  densityAt20: 'Density at {{standard}}',
  offScale: 'Beyond the end of its scale',
  massShare: 'Ethanol by mass',
  brix: 'Degrees Brix',
  sugar: 'Sugar',
  volumeAt20: 'At {{standard}}',
  volumeAt60F: 'At 60 °F',
  volumeChange: 'Difference',
  proof: 'Proof',
  flask: 'Volume of the flask',
  sugarToAdd: 'Sugar to add',
  sugarRoom: 'Room the sugar takes',
  strengthAfter: 'Strength then',
  ethanolMass: 'Pure alcohol',
  energyKj: 'Energy',
  energyKcal: 'or in kilocalories',
  drinksUnitedKingdom: 'British units',
  drinksUnitedStates: 'US standard drinks',
  drinksAustralia: 'Drinks of 10 g (Australia, WHO)',
} as const satisfies Record<BenchQuantity, string>

const note = {
  strongSpirit: {
    title: 'Keep it from flames',
    text: 'Above about {{value}} spirit gives off vapour that burns at room temperature. No flame, no sparks, no hot hob near it; air the room.',
  },
  boilOffCare: {
    title: 'The vapour burns',
    text: 'Open a window and use an electric plate: never a flame, never a closed room. Boil gently, stay with it, and stop at a third of the volume: never boil it dry. What is boiled off is lost; catching it would be distilling, which is unlawful at home in many places.',
  },
  notLegalAdvice: {
    title: 'Facts, not legal advice',
    text: 'Only strength and sugar are compared. Selling needs a licence and duty almost everywhere: follow the law where you live.',
  },
  straightRule: {
    title: 'Why not just divide?',
    text: 'Volume times strength, divided by the strength wanted, takes no account of contraction: it would leave this spirit at {{value}}.',
  },
  sugarMisleads: {
    title: 'Only without sugar',
    text: 'As little as {{little}} of sugar makes it show {{value}} too little. For a liqueur use boil-off, or two instruments.',
  },
  spiritMisleads: {
    title: 'Only without spirit',
    text: 'Spirit refracts too: at {{little}} and no sugar at all it shows {{value}}. For a liqueur use it together with a hydrometer.',
  },
  floatsOffScale: {
    title: 'It shows nothing',
    text: 'The liquid is too dense: the alcoholometer floats with its whole scale above the surface, {{value}} beyond the zero mark.',
  },
  sinksOffScale: {
    title: 'It shows nothing',
    text: 'The liquid is lighter than pure spirit at {{standard}}: the alcoholometer sinks, {{value}} beyond the end of its scale.',
  },
  shortcutErrs: {
    title: 'The old rule would say {{value}}',
    text: 'Taking the second density from the first is quick, and wrong for strong, sweet liqueurs. The strength above solves for both together.',
  },
  atTheEdge: {
    title: 'At the edge of what can be',
    text: 'No mixture shows exactly these two numbers; the nearest is {{value}} away, which the instruments’ own fineness explains.',
  },
  undissolved: {
    title: 'Not all of it will dissolve',
    text: 'About {{value}} of sugar is likely to lie at the bottom at that temperature. Keep it warmer, use less, or reduce the strength. This is a guide, not a table.',
  },
  glassOnly: {
    title: 'The glass only',
    text: 'What this is at {{standard}} depends on what is in the liquid: choose spirit or syrup if it is one of them.',
  },
} as const satisfies Record<BenchNote['code'], { title: string; text: string }>

const liquid = {
  spirit: 'Spirit, no sugar',
  syrup: 'Sugar and water',
  other: 'Something else',
} as const satisfies Record<BenchLiquid, string>

const category = {
  liqueur: 'Liqueur (EU)',
  cherryLiqueurOfCherrySpirit: 'Cherry liqueur of cherry spirit (EU)',
  gentianLiqueur: 'Gentian liqueur (EU)',
  cremeDe: 'Crème de … (EU)',
  cremeDeCassis: 'Crème de cassis (EU)',
  sloeGin: 'Sloe gin (EU)',
  sloeAromatisedSpirit: 'Sloe-aromatised spirit (EU)',
  maraschino: 'Maraschino (EU)',
  nocino: 'Nocino (EU)',
  americanLiqueur: 'Liqueur or cordial (US)',
} as const satisfies Record<LegalCategory, string>

const standing = {
  read: 'read in the law',
  secondHand: 'at second hand',
  remembered: 'from memory: check it',
} as const satisfies Record<CategoryVerdict['standing'], string>

export const bench = {
  title: 'Bench',
  lead: 'Small instruments that need no batch. Each answers as you type, and says how sure it is.',
  list: 'Instruments',
  choose: 'Instrument',
  group,
  tool,
  mode,
  modes: 'Which way',
  input,
  liquids: 'What is in it',
  liquid,
  category,
  standing,
  compensated: 'Temperature',
  compensation: { yes: 'It corrects by itself', no: 'It does not correct' },
  fineness: {
    title: 'How fine does it read?',
    text: 'One standard uncertainty, plus or minus. Change it if your instrument is finer or coarser.',
    plusMinus: '{{what}} ±',
    tooSmall: 'Must be above nothing.',
  },
  fine,
  taken,
  steps: {
    boilOff: [
      'Measure out a volume, say {{sample}}, and read the hydrometer and the thermometer in it.',
      'Boil gently in a pan down to about a third. All the spirit is gone by then.',
      'Let it cool. Rinse every drop back, and make it up with water to exactly the same volume, at the same temperature.',
      'Read the hydrometer again.',
    ],
    weighing: [
      'Put the clean, dry flask on the scale and set it to zero.',
      'Fill it exactly to its mark, or to the brim if it has none, the same each time. Wipe it dry, and read the weight.',
    ],
  },
  answer: 'Answer',
  waiting: 'Fill in the numbers, and the answer stands here.',
  quantity,
  ofMass: '% by mass',
  note,
  how: {
    title: 'How is this computed?',
    source: 'After',
    limits: 'Holds for',
    uncertainty: 'How sure',
    plusMinus:
      '± is one standard uncertainty: the truth lies within it two times in three, and within twice as much nineteen times in twenty.',
  },
  dilution: {
    label:
      '{{spirit}} of spirit and {{water}} of water make {{result}}: {{gap}} less than both together.',
    labelSwells:
      '{{spirit}} of spirit and {{water}} of water make {{result}}: {{gap}} more than both together.',
    spirit: 'spirit',
    water: 'water',
    together: 'together',
    gap: '{{gap}} less: they contract',
    gapMore: '{{gap}} more: weak spirit swells',
  },
  crossing: {
    title: 'Where the two readings agree',
    description:
      'Two lines over strength. All liquids that the hydrometer could mean grow sweeter with strength, all that the refractometer could mean grow drier; they meet at {{strength}} and {{sugar}}.',
    density: 'hydrometer',
    refraction: 'refractometer',
    strengthAxis: 'Strength, {{unit}}',
    sugarAxis: 'Sugar, {{unit}}',
    strength: 'At a strength of',
    densitySugar: 'Sugar by hydrometer',
    refractionSugar: 'Sugar by refractometer',
    asTable: 'Show as table',
    asChart: 'Show as chart',
    bands: 'Shaded: how fine each instrument reads.',
  },
  categories: {
    title: 'Names the law knows',
    caption: 'Names that strength and sugar would allow',
    name: 'Name',
    verdict: 'Strength and sugar',
    standing: 'Rule',
    isMet: 'enough',
    missingStrength: '{{amount}} short',
    missingSugar: '{{amount}} of sugar short',
    excessSugar: '{{amount}} of sugar too much',
  },
  record: {
    open: 'Record into a batch…',
    title: 'Record this reading into a batch',
    batch: 'Batch',
    choose: 'choose…',
    jar: 'Read in',
    at: 'When',
    note: 'Note',
    none: 'No batch has a vessel with something in it. Open one on Batches first.',
    doubtful: 'It will be kept, but not used until you confirm it on the batch’s page.',
    means: 'In this batch it means {{what}}.',
    go: 'Record the reading',
    done: 'Recorded into {{batch}}.',
    toBatch: 'Go to the batch',
    missing: 'Choose one.',
  },
} as const
