/** A sum over every row of the show as it was written, so that a letter that changed on the disk is noticed. */
export const rowSums = `
CREATE TABLE "rowSums" (
  "table" TEXT NOT NULL,
  "rowId" TEXT NOT NULL,
  "sum" INTEGER NOT NULL,
  PRIMARY KEY ("table", "rowId")
) STRICT, WITHOUT ROWID;
`;
