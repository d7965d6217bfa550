/** Words of riders that the engineer taught, for one band or for all; riders that a later version replaced. */
export const ownWords = `
CREATE TABLE "ownWords" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "words" TEXT NOT NULL,
  "kind" TEXT NOT NULL,
  "band" TEXT NOT NULL,
  "actId" TEXT
    REFERENCES "acts" ("id") ON DELETE SET NULL DEFERRABLE INITIALLY DEFERRED
) STRICT;
CREATE INDEX "ownWords by actId" ON "ownWords" ("actId");
ALTER TABLE "riders" ADD COLUMN "replaced" INTEGER NOT NULL DEFAULT 0 CHECK ("replaced" IN (0, 1));
`;
