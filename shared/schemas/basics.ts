import * as z from 'zod'

// Zod's compiled parsers, twice as fast, need eval, which a page's content security policy forbids.
z.config({ jitless: 'window' in globalThis })

/** An identifier chosen by whoever asks for the new thing, so that a repeated request is harmless. */
export const Id = z.string().regex(/^[A-Za-z0-9_-]{1,64}$/, 'letters, digits, - and _ only')

/** An instant in UTC. */
export const Instant = z.iso.datetime({ offset: false })

/** Where a plan or a question begins: what follows must still have years of four digits. */
export const BeginningInstant = Instant.refine((at) => at > '1900' && at < '3000')

export const Name = z.string().trim().min(1).max(120)
export const Note = z.string().max(4000)

export const VolumeMl = z.number().positive().max(10_000_000)
export const MassG = z.number().positive().max(10_000_000)
export const StrengthPctVol = z.number().min(0).max(100)
export const SugarGPerL = z.number().min(0).max(1200)
export const TemperatureC = z.number().min(-20).max(60)
/** Of what is poured: where the density formulas of both water and spirit hold. */
export const PouringTemperatureC = z.number().min(0).max(40)
/** Of a cellar, a kitchen or a sunny sill: where jars steep. */
export const CellarTemperatureC = z.number().min(0).max(40)
export const Count = z.number().int().positive().max(100_000)

const amountG = z.number()
export const MatterShape = z.strictObject({
  ethanolG: amountG,
  waterG: amountG,
  sugarG: amountG,
  acidG: amountG,
  solublesG: amountG,
  pulpG: amountG,
})

/** A batch's colour as `#rrggbb`: every vessel that holds it is drawn in it. */
export const Colour = z.string().regex(/^#[0-9a-f]{6}$/i)
