/** An id for a new row. */
export const newId = (): string => crypto.randomUUID();
