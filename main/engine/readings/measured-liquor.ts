/** What the sweet-liquid methods tell: at 20 °C, each with one standard uncertainty. */
export interface MeasuredLiquor {
  readonly strengthPctVol: number
  readonly sugarGPerL: number
  readonly uncertaintyPctVol: number
  readonly uncertaintyGPerL: number
}
