/** The temperature at which liquids are counted, 20 °C, in the cellar's own degrees. */
import { useQuantities } from '../../parts/quantity/use-quantities.ts'

export const useStandard = (): string => useQuantities().text(20, 'temperature')
