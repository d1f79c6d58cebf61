/** A maker's text as it can be set: composed letters, one line, nothing invisible in it. */

export interface CleanText {
  readonly text: string
  /** Control and formatting characters were left out. */
  readonly hadControls: boolean
  /** Letters of a script written from right to left. */
  readonly isRightToLeft: boolean
}

/** Marks of direction, joiners, tags and the like; the soft hyphen shows only where a line breaks. */
const controls = /[\p{Cc}\p{Cf}\p{Co}\p{Cs}\p{Zl}\p{Zp}]/gu
/** Line ends and tabs stand for a space; that is no loss worth a word. */
const spacing = /[\t\n\r\u2028\u2029]+/g
const rightToLeft =
  /\p{Script=Hebrew}|\p{Script=Arabic}|\p{Script=Syriac}|\p{Script=Thaana}|\p{Script=Nko}/u

export function cleanText(written: string): CleanText {
  const spaced = written.normalize('NFC').replace(spacing, ' ')
  const bare = spaced.replace(controls, '')
  return {
    text: bare.replaceAll(/ {2,}/g, ' ').trim(),
    hadControls: bare !== spaced,
    isRightToLeft: rightToLeft.test(bare),
  }
}
