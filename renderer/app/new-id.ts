/** A new identifier for a thing this screen asks the book to make. */
export const newId = (): string => crypto.randomUUID()
