/**
 * Diffusion in a stirred, limited volume: roots and uptake of Crank's solutions (The Mathematics of
 * Diffusion, 2nd ed. 1975), computed for the craft reference from the formulas (from memory) and
 * confirmed there by a finite-volume solution of its own; given to four decimals.
 */
import type { PieceShape } from '../../main/engine/steeping/uptake-roots.ts'

export interface RootRow {
  readonly shape: PieceShape
  readonly alpha: number
  readonly roots: readonly number[]
  /** Weight of the first term, and Fourier numbers at half and nine tenths of the way. */
  readonly firstWeight: number
  readonly fourier50: number
  readonly fourier90: number
}

// prettier-ignore
export const rootRows: readonly RootRow[] = [
  { shape: 'slab', alpha: 0.25, roots: [2.5704, 5.354, 8.3029, 11.3348, 14.408, 17.5034], firstWeight: 0.3758, fourier50: 0.0176, fourier90: 0.2014 },
  { shape: 'slab', alpha: 0.5, roots: [2.2889, 5.087, 8.0962, 11.1727, 14.2764, 17.3932], firstWeight: 0.5338, fourier50: 0.0414, fourier90: 0.3198 },
  { shape: 'slab', alpha: 1.0, roots: [2.0288, 4.9132, 7.9787, 11.0855, 14.2074, 17.3364], firstWeight: 0.654, fourier50: 0.0773, fourier90: 0.4563 },
  { shape: 'slab', alpha: 1.5, roots: [1.9071, 4.849, 7.9378, 11.0558, 14.1841, 17.3172], firstWeight: 0.702, fourier50: 0.1005, fourier90: 0.5358 },
  { shape: 'slab', alpha: 2.0, roots: [1.8366, 4.8158, 7.9171, 11.0408, 14.1724, 17.3076], firstWeight: 0.7276, fourier50: 0.1163, fourier90: 0.5884 },
  { shape: 'slab', alpha: 3.0, roots: [1.7582, 4.782, 7.8962, 11.0258, 14.1607, 17.298], firstWeight: 0.7542, fourier50: 0.1363, fourier90: 0.6537 },
  { shape: 'slab', alpha: 4.0, roots: [1.7155, 4.7648, 7.8857, 11.0183, 14.1548, 17.2932], firstWeight: 0.7679, fourier50: 0.1484, fourier90: 0.6927 },
  { shape: 'slab', alpha: 9.0, roots: [1.6385, 4.7358, 7.8681, 11.0057, 14.145, 17.2852], firstWeight: 0.7913, fourier50: 0.1726, fourier90: 0.7705 },
  { shape: 'slab', alpha: Infinity, roots: [1.5708, 4.7124, 7.854, 10.9956, 14.1372, 17.2788], firstWeight: 0.8106, fourier50: 0.1967, fourier90: 0.8481 },
  { shape: 'cylinder', alpha: 0.25, roots: [3.4455, 6.371, 9.3397, 12.3543, 15.4031, 18.4755], firstWeight: 0.2177, fourier50: 0.0047, fourier90: 0.0732 },
  { shape: 'cylinder', alpha: 0.5, roots: [3.2075, 6.0778, 9.0606, 12.1066, 15.1863, 18.2852], firstWeight: 0.35, fourier50: 0.0116, fourier90: 0.1238 },
  { shape: 'cylinder', alpha: 1.0, roots: [2.9496, 5.8411, 8.8727, 11.9561, 15.0624, 18.1803], firstWeight: 0.479, fourier50: 0.0225, fourier90: 0.1805 },
  { shape: 'cylinder', alpha: 1.5, roots: [2.8159, 5.7438, 8.8028, 11.9026, 15.0192, 18.1443], firstWeight: 0.5388, fourier50: 0.0299, fourier90: 0.2126 },
  { shape: 'cylinder', alpha: 2.0, roots: [2.7346, 5.6914, 8.7666, 11.8752, 14.9974, 18.1261], firstWeight: 0.5726, fourier50: 0.0351, fourier90: 0.2335 },
  { shape: 'cylinder', alpha: 3.0, roots: [2.6411, 5.6366, 8.7296, 11.8476, 14.9753, 18.1078], firstWeight: 0.6093, fourier50: 0.0419, fourier90: 0.2591 },
  { shape: 'cylinder', alpha: 4.0, roots: [2.5888, 5.6083, 8.7109, 11.8337, 14.9643, 18.0987], firstWeight: 0.6288, fourier50: 0.046, fourier90: 0.2744 },
  { shape: 'cylinder', alpha: 9.0, roots: [2.4922, 5.5599, 8.6793, 11.8103, 14.9458, 18.0833], firstWeight: 0.6629, fourier50: 0.0544, fourier90: 0.3045 },
  { shape: 'cylinder', alpha: Infinity, roots: [2.4048, 5.5201, 8.6537, 11.7915, 14.9309, 18.0711], firstWeight: 0.6917, fourier50: 0.0631, fourier90: 0.3344 },
  { shape: 'sphere', alpha: 0.25, roots: [4.1811, 7.2169, 10.2355, 13.2689, 16.3211, 19.3898], firstWeight: 0.1519, fourier50: 0.0022, fourier90: 0.0373 },
  { shape: 'sphere', alpha: 0.5, roots: [3.972, 6.9387, 9.9421, 12.986, 16.0581, 19.1486], firstWeight: 0.258, fourier50: 0.0053, fourier90: 0.0652 },
  { shape: 'sphere', alpha: 1.0, roots: [3.7264, 6.6814, 9.7156, 12.7927, 15.8924, 19.0048], firstWeight: 0.3763, fourier50: 0.0105, fourier90: 0.0973 },
  { shape: 'sphere', alpha: 1.5, roots: [3.5909, 6.5664, 9.6254, 12.7204, 15.8326, 18.9541], firstWeight: 0.4368, fourier50: 0.0141, fourier90: 0.1154 },
  { shape: 'sphere', alpha: 2.0, roots: [3.5059, 6.5024, 9.5777, 12.683, 15.802, 18.9283], firstWeight: 0.4727, fourier50: 0.0167, fourier90: 0.1271 },
  { shape: 'sphere', alpha: 3.0, roots: [3.4056, 6.4338, 9.5282, 12.6448, 15.771, 18.9023], firstWeight: 0.5129, fourier50: 0.02, fourier90: 0.1414 },
  { shape: 'sphere', alpha: 4.0, roots: [3.3485, 6.3978, 9.5029, 12.6254, 15.7554, 18.8892], firstWeight: 0.5348, fourier50: 0.022, fourier90: 0.1499 },
  { shape: 'sphere', alpha: 9.0, roots: [3.241, 6.3353, 9.4599, 12.5928, 15.7291, 18.8672], firstWeight: 0.574, fourier50: 0.0262, fourier90: 0.1666 },
  // oxlint-disable-next-line oxc/approx-constant -- rounded as the reference prints it
  { shape: 'sphere', alpha: Infinity, roots: [3.1416, 6.2832, 9.4248, 12.5664, 15.708, 18.8496], firstWeight: 0.6079, fourier50: 0.0305, fourier90: 0.183 },
]

export const rootTolerance = 0.0005

/** Share of the way gone, at an alpha and a Fourier number. */
export const uptakeChecks: readonly {
  readonly shape: PieceShape
  readonly alpha: number
  readonly fourier: number
  readonly expected: number
}[] = [
  { shape: 'slab', alpha: 1.0, fourier: 0.1, expected: 0.5528 },
  { shape: 'slab', alpha: 2.0, fourier: 0.2, expected: 0.6282 },
  { shape: 'slab', alpha: 4.0, fourier: 0.6927, expected: 0.9 },
  { shape: 'cylinder', alpha: 1.0, fourier: 0.05, expected: 0.6536 },
  { shape: 'cylinder', alpha: 1.5, fourier: 0.1, expected: 0.7496 },
  { shape: 'sphere', alpha: 0.5, fourier: 0.05, expected: 0.8661 },
  { shape: 'sphere', alpha: 1.0, fourier: 0.05, expected: 0.7905 },
  { shape: 'sphere', alpha: 0.6667, fourier: 0.03, expected: 0.7506 },
  { shape: 'sphere', alpha: Infinity, fourier: 0.0305, expected: 0.4997 },
]

export const uptakeTolerance = 0.001

/** One day for a ball of 8 mm radius at 3e-10 m²/s in twice its liquid; craft reference. */
export const oneDay = {
  shape: 'sphere',
  alpha: 2,
  radiusMm: 8,
  diffusivityM2PerS: 3e-10,
  expected: 0.9967,
  tolerance: 0.002,
} as const

/**
 * Half-times of skins by permeability (m/s; 1e-8 fits pear cuticle of 1.28e-13 m²/s over 12 µm,
 * found; the others are estimates): k = P (3/R)(1 + 1/alpha).
 */
export const skinChecks = [
  { radiusMm: 10, permeability: 1e-8, alpha: 1.5, kineticClass: 'thinSkin', halfTimeDays: 1.6 },
  { radiusMm: 18, permeability: 3e-9, alpha: 1.5, kineticClass: 'waxySkin', halfTimeDays: 9.63 },
] as const

/** Activation energies behind pairs of measured rates, kJ/mol; sources found. */
export const activationChecks = [
  {
    source: 'water in pear, inner cortex, 1 and 20 °C',
    rates: [1.23e-11, 4.359e-11],
    temperaturesC: [1, 20],
    expected: 44.5,
  },
  {
    source: 'water in pear, cuticle, 1 and 20 °C',
    rates: [5.5e-14, 1.28e-13],
    temperaturesC: [1, 20],
    expected: 29.7,
  },
  {
    source: 'kiwiberry in sucrose, 1 h at 30 and 50 °C; Molecules 23 (2018) 1236',
    rates: [7.5, 12.8],
    temperaturesC: [30, 50],
    expected: 21.8,
  },
] as const

/** Sugar draw on spirit-soaked fruit: the worked example of the craft reference (estimates). */
export const sugarDrawChecks = {
  recovered: { heldL: 0.65, sugarKg: 0.25, expected: 0.556, tolerance: 0.002 },
} as const
