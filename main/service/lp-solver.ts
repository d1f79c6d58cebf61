/** HiGHS behind the engine's door for linear programs; loaded when it is first needed. */
import type { Highs, Model } from 'highs'
import type { LinearProgram, SolveLinear, Variable } from '../engine/index.ts'

let loading: Promise<SolveLinear> | undefined

export const lpSolver = (): Promise<SolveLinear> => (loading ??= load())

async function load(): Promise<SolveLinear> {
  const { default: loadHighs } = await import('highs')
  const highs = await loadHighs()
  // One instance for the program's life: making one takes longer than most solves.
  const model: Model = highs.createModel()
  model.options.set({ output_flag: false, random_seed: 0, ...searchesPlainly })
  return (program) => run(highs, model, program)
}

/** Nearer to the best than this is no better to a maker; whole numbers are searched for no longer. */
const relativeGap = 1e-6

/**
 * The search through whole numbers is exact without its helpers: they guess at good answers and
 * look for symmetry, which pays in programs of thousands of columns. In one of thirty they take
 * three times as long as the search itself.
 */
const searchesPlainly = {
  mip_detect_symmetry: false,
  mip_allow_restart: false,
  mip_heuristic_effort: 0,
  mip_heuristic_run_feasibility_jump: false,
  mip_heuristic_run_root_reduced_cost: false,
  mip_heuristic_run_rens: false,
  mip_heuristic_run_rins: false,
}

function run(highs: Highs, model: Model, program: LinearProgram): number[] | undefined {
  const hasWhole = program.variables.some(({ isWhole }) => isWhole)
  model.clearModel()
  model.options.set({
    solver: hasWhole ? 'choose' : 'simplex',
    presolve: hasWhole ? 'choose' : 'off',
    mip_rel_gap: relativeGap,
    primal_feasibility_tolerance: 1e-9,
  })
  model.passModel(dataOf(highs, program))
  model.run()
  if (model.getModelStatus() !== highs.constants.modelStatus.optimal) return undefined
  return [...model.getSolution().colValue].map((value, index) =>
    within(program.variables[index] as Variable, value),
  )
}

/** Solvers miss bounds by their tolerance; grams below nothing would be no liquid. */
const within = ({ low, high, isWhole }: Variable, value: number): number =>
  Math.min(Math.max(isWhole ? Math.round(value) : value, low), high)

export function dataOf(highs: Highs, { variables, rows, minimise }: LinearProgram) {
  const colCost = new Float64Array(variables.length)
  for (const [variable, cost] of minimise) colCost[variable] = (colCost[variable] ?? 0) + cost
  const entries = rows.map(({ terms }) => terms.filter(([, coefficient]) => coefficient !== 0))
  const starts = [0]
  for (const terms of entries) starts.push((starts.at(-1) ?? 0) + terms.length)
  const { continuous, integer } = highs.constants.variableType
  return {
    numCols: variables.length,
    numRows: rows.length,
    colCost,
    colLower: variables.map(({ low }) => low),
    colUpper: variables.map(({ high }) => high),
    rowLower: rows.map(({ low }) => low),
    rowUpper: rows.map(({ high }) => high),
    matrix: {
      format: 'csr' as const,
      numRows: rows.length,
      numCols: variables.length,
      starts,
      indices: entries.flatMap((terms) => terms.map(([variable]) => variable)),
      values: entries.flatMap((terms) => terms.map(([, coefficient]) => coefficient)),
    },
    ...(variables.some(({ isWhole }) => isWhole) && {
      integrality: variables.map(({ isWhole }) => (isWhole ? integer : continuous)),
    }),
  }
}
