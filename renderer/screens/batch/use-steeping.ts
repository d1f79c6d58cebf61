/** The curve and the forecast of a batch, asked alike by every part of its page. */
import { useRead } from '../../app/queries.ts'

export const useCurve = (batchId: string) =>
  useRead('batches.curve', { batchId, points: 400 }, { keepsLast: true })

export const useForecast = (batchId: string) =>
  useRead('batches.forecast', { batchId }, { keepsLast: true })
