/**
 * Which sales names would a liqueur's strength and sugar allow, and what is it short of?
 *
 * Facts of Regulation (EU) 2019/787 (before it 110/2008), 27 CFR 5 and, for label tolerances,
 * Regulation (EU) 1169/2011 Annex XII; sugar is counted as invert sugar, 1.0526 times sucrose.
 * In: % vol and g/L of sucrose at 20 °C, kg/m³ for sugar by weight. Out: one line per name with
 * what is missing, 0 where nothing is. RangeError outside.
 * Leaves out: what must be in it (which fruit, whose spirit), and that selling needs a licence.
 * @example invertSugar(95) // 100.0
 */
import type { Explanation } from '../../../shared/schemas/bench.ts'
import { requireRange } from '../range.ts'

/** By molar mass: sucrose 342.30 takes up one water, 18.015. */
const invertPerSucrose = 1.0526

interface Rule {
  readonly leastPctVol: number
  readonly leastInvertGPerL: number
  readonly mostInvertGPerL?: number
  readonly leastSugarMassFraction?: number
  /** Read in a public copy of the law, at second hand, or remembered. */
  readonly standing: 'read' | 'secondHand' | 'remembered'
}

const european = (
  leastPctVol: number,
  leastInvertGPerL: number,
  standing: Rule['standing'],
): Rule => ({ leastPctVol, leastInvertGPerL, standing })

export const legalRules = {
  liqueur: european(15, 100, 'read'),
  cherryLiqueurOfCherrySpirit: european(15, 70, 'read'),
  gentianLiqueur: european(15, 80, 'read'),
  cremeDe: european(15, 250, 'secondHand'),
  cremeDeCassis: european(15, 400, 'secondHand'),
  sloeGin: european(25, 0, 'secondHand'),
  sloeAromatisedSpirit: { ...european(25, 80, 'remembered'), mostInvertGPerL: 250 },
  maraschino: european(24, 250, 'remembered'),
  nocino: european(30, 100, 'remembered'),
  americanLiqueur: {
    leastPctVol: 0,
    leastInvertGPerL: 0,
    leastSugarMassFraction: 0.025,
    standing: 'secondHand',
  },
} as const satisfies Record<string, Rule>
export type LegalCategory = keyof typeof legalRules

export interface CategoryVerdict {
  readonly category: LegalCategory
  readonly isMet: boolean
  readonly missingPctVol: number
  readonly missingInvertGPerL: number
  readonly excessInvertGPerL: number
}

export function legalCategory(liqueur: {
  readonly strengthPctVol: number
  readonly sugarGPerL: number
  readonly densityKgPerM3: number
}): CategoryVerdict[] {
  requireRange('strength', liqueur.strengthPctVol, 0, 100, '% vol')
  requireRange('sugar', liqueur.sugarGPerL, 0, 1600, 'g/L')
  requireRange('density', liqueur.densityKgPerM3, 700, 1600, 'kg/m³')
  return Object.entries(legalRules).map(([category, rule]) =>
    verdict(category as LegalCategory, rule, liqueur),
  )
}

export const invertSugar = (sucroseGPerL: number): number => sucroseGPerL * invertPerSucrose

/** How far a label's strength may be from the truth, % vol. */
export const labelTolerancePctVol = (hasMaceratedFruit: boolean): number =>
  hasMaceratedFruit ? 1.5 : 0.3

export const isWithinLabelTolerance = (label: {
  readonly statedPctVol: number
  readonly truePctVol: number
  readonly hasMaceratedFruit: boolean
}): boolean =>
  Math.abs(label.truePctVol - label.statedPctVol) <=
  labelTolerancePctVol(label.hasMaceratedFruit) + 1e-9

function verdict(
  category: LegalCategory,
  rule: Rule,
  liqueur: { strengthPctVol: number; sugarGPerL: number; densityKgPerM3: number },
): CategoryVerdict {
  const invert = invertSugar(liqueur.sugarGPerL)
  const byWeight = invertSugar((rule.leastSugarMassFraction ?? 0) * liqueur.densityKgPerM3)
  const missingPctVol = Math.max(rule.leastPctVol - liqueur.strengthPctVol, 0)
  const missingInvertGPerL = Math.max(rule.leastInvertGPerL - invert, byWeight - invert, 0)
  const excessInvertGPerL = Math.max(invert - (rule.mostInvertGPerL ?? invert), 0)
  const isMet = missingPctVol + missingInvertGPerL + excessInvertGPerL === 0
  return { category, isMet, missingPctVol, missingInvertGPerL, excessInvertGPerL }
}

export const legalCategoryExplained: Explanation = {
  id: 'legalCategory',
  method:
    'Strength and sugar are held against the least that each name asks for; sugar counts as invert sugar, 1.0526 times cane sugar.',
  source:
    'Regulation (EU) 2019/787; 27 CFR 5; label tolerances in Regulation (EU) 1169/2011, Annex XII',
  limits:
    'Only strength and sugar: which fruit and whose spirit must go in, and that selling needs a licence, is not looked at. Some rules are known at second hand or from memory, as marked.',
  uncertainty: 'None stated: the rules are limits, not measurements.',
}
