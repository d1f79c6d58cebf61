/** HiGHS behind the engine's door for integer programs: with a start, a time limit and a gap. */
import type { IntegerSolved, SolveInteger } from '../engine/index.ts'
import { dataOf } from './lp-solver.ts'

/** kSolutionStatusFeasible. */
const feasible = 2

/** Loads the solver; its own instance, since a worker asks for it. */
export async function integerSolver(): Promise<SolveInteger> {
  const { default: loadHighs } = await import('highs')
  const highs = await loadHighs()
  const { mipLogging, mipImprovingSolution } = highs.constants.callbackType
  return ({ program, start, timeLimitSeconds, absoluteGap, onGap }) => {
    const model = highs.createModel()
    try {
      model.options.set({
        output_flag: false,
        random_seed: 0,
        time_limit: timeLimitSeconds,
        mip_abs_gap: absoluteGap,
        mip_rel_gap: 0,
        primal_feasibility_tolerance: 1e-9,
      })
      model.passModel(dataOf(highs, program))
      model.setSolution({ colValue: Float64Array.from(start) })
      const tell = ({ data }: { data: { mip_primal_bound?: number; mip_dual_bound?: number } }) => {
        const gap = (data.mip_primal_bound ?? Infinity) - (data.mip_dual_bound ?? -Infinity)
        if (Number.isFinite(gap)) onGap(gap)
        return undefined
      }
      model.run({ [mipLogging]: tell, [mipImprovingSolution]: tell })
      const values = [...model.getSolution().colValue].map((value, index) =>
        program.variables[index]?.isWhole ? Math.round(value) : value,
      )
      const hasWhole = program.variables.some(({ isWhole }) => isWhole)
      const isSolved = model.getModelStatus() === highs.constants.modelStatus.optimal
      // A program without whole numbers is its own bound, once it is solved.
      const partsBound = isSolved ? Number(model.info.get('objective_function_value')) : -Infinity
      const bound = hasWhole ? Number(model.info.get('mip_dual_bound')) : partsBound
      // Feasible, as HiGHS numbers it: without one its values are nothing to go by.
      const isThere = Number(model.info.get('primal_solution_status')) === feasible
      return isThere ? ({ values, bound } satisfies IntegerSolved) : undefined
    } finally {
      model.dispose()
    }
  }
}
