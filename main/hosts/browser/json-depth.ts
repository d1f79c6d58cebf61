/**
 * Is this text nested deeper than any request is? Told before it is parsed, since what walks a
 * parsed value deep enough runs out of stack.
 */

/** The deepest request of the contract is far below. */
export const deepestNesting = 64

export function isTooDeep(json: string): boolean {
  let depth = 0
  let isInText = false
  for (let index = 0; index < json.length; index += 1) {
    const sign = json[index]
    if (isInText) {
      if (sign === '\\') index += 1
      else if (sign === '"') isInText = false
    } else if (sign === '"') isInText = true
    else if (sign === '[' || sign === '{') {
      depth += 1
      if (depth > deepestNesting) return true
    } else if (sign === ']' || sign === '}') depth -= 1
  }
  return false
}
