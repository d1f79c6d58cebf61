/** The little of fontkit that papers use; it brings no types of its own. */
declare module 'fontkit' {
  export interface Glyph {
    readonly id: number
    readonly bbox: { readonly minY: number; readonly maxY: number }
    readonly path: { toSVG(): string; scale(x: number, y: number): Glyph['path'] }
  }
  export interface GlyphRun {
    readonly glyphs: readonly Glyph[]
    readonly positions: readonly {
      readonly xAdvance: number
      readonly xOffset: number
      readonly yOffset: number
    }[]
  }
  export interface Font {
    readonly unitsPerEm: number
    readonly ascent: number
    readonly descent: number
    readonly capHeight: number
    readonly xHeight: number
    hasGlyphForCodePoint(codePoint: number): boolean
    layout(text: string, features?: readonly string[]): GlyphRun
  }
  export function create(bytes: Uint8Array): Font
}
