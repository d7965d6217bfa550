/**
 * The last print of each sheet, so that the next one can mark what has changed and say what it replaces. No rows of
 * the show: what was printed cannot be undone.
 */
export const printedSheets = `
CREATE TABLE "printedSheets" (
  "key" TEXT PRIMARY KEY,
  "edition" TEXT NOT NULL
) STRICT;
`;
