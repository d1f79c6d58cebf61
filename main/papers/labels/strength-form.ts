/**
 * Strength as labels must say it: in the European Union "% vol" after a number with at most one
 * decimal, which "alcohol" or "alc." may precede, in Polish "% obj.", "alkohol" and "alk." (Regulation (EU) 1169/2011, Annex XII); in the
 * United States "% alc/vol" at 60 °F, and the proof beside it if wished (27 CFR 5.65; from memory).
 */
import { proofOfStrength, strengthOfProof } from '../../engine/index.ts'
import type { PaperWords } from '../words/paper-words.ts'
import type { StrengthPrefix } from '../../../shared/schemas/labels.ts'

export interface StrengthStyle {
  readonly locale: string
  readonly units: 'metric' | 'us'
  readonly prefix: StrengthPrefix
  readonly words: Pick<PaperWords, 'label' | 'units'>
}

const noBreak = '\u00a0'

/** A tenth at most, and no idle zero: 30 % vol, 29.5 % vol. */
export function strengthWords(strengthPctVol: number, style: StrengthStyle): string {
  const number = (value: number) =>
    new Intl.NumberFormat(style.locale, {
      maximumFractionDigits: 1,
      useGrouping: false,
      numberingSystem: 'latn',
    }).format(value)
  const prefix = style.words.label.strengthPrefix(style.prefix).replaceAll(' ', noBreak)
  if (style.units === 'us') {
    const atSixty = rounded(proofOfStrength(strengthPctVol) / 2)
    return `${prefix}${number(atSixty)}%${noBreak}alc/vol (${number(2 * atSixty)}${noBreak}proof)`
  }
  return `${prefix}${number(rounded(strengthPctVol))}${noBreak}${style.words.units.pctVol.replaceAll(' ', noBreak)}`
}

/** Halves away from zero, of the number as people write it: 29.45 is 29.5. */
const rounded = (value: number): number => Math.round(Number((value * 10).toFixed(6))) / 10

const european = /^(?:alcohol|alc\.|alkohol|alk\.)?\s*(\d{1,3}(?:[.,]\d)?)\s*% (?:vol|obj)\.?$/iu
const american =
  /^(?:alcohol|alc\.)?\s*(\d{1,3}(?:[.,]\d)?)\s*% alc(?:\.)?\/vol(?:\.)?(?:\s*\((\d{1,3}(?:[.,]\d)?) proof\))?$/iu

const numberOf = (digits: string | undefined): number => Number(digits?.replace(',', '.'))

/** What a label's strength says, % vol at 20 °C, or undefined where it is not in the form the law asks. */
export function readStrength(text: string): number | undefined {
  const plain = text.replaceAll(/[\s\u00a0\u202f]+/gu, ' ').trim()
  const inEurope = european.exec(plain)
  if (inEurope) return possible(numberOf(inEurope[1]))
  const inAmerica = american.exec(plain.replaceAll(/% ?alc/giu, '% alc'))
  if (!inAmerica) return undefined
  const share = numberOf(inAmerica[1])
  const isProofRight =
    inAmerica[2] === undefined || Math.abs(numberOf(inAmerica[2]) - 2 * share) < 0.11
  if (!isProofRight || share > 100) return undefined
  return possible(strengthOfProof(2 * share))
}

const possible = (strengthPctVol: number): number | undefined =>
  strengthPctVol <= 100 ? strengthPctVol : undefined
