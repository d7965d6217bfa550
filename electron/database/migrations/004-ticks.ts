/** What was done of a changeover, and by how much a new plan of a day must be better than the one there is. */
export const ticks = `
CREATE TABLE "ticks" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "actId" TEXT NOT NULL
    REFERENCES "acts" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "taskKey" TEXT NOT NULL,
  "doneAt" TEXT NOT NULL
) STRICT;
CREATE INDEX "ticks by actId" ON "ticks" ("actId");
ALTER TABLE "days" ADD COLUMN "keepUnlessGain" REAL;
`;
