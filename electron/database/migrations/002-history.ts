/**
 * Undo that survives a restart: each step holds the statements that take it back (or, once it is taken back, that
 * do it again). `standing` is one row; its revision counts every durable write.
 */
export const history = `
CREATE TABLE "steps" (
  "number" INTEGER PRIMARY KEY,
  "label" TEXT NOT NULL,
  "madeAt" TEXT NOT NULL,
  "undone" INTEGER NOT NULL DEFAULT 0 CHECK ("undone" IN (0, 1))
) STRICT;
CREATE INDEX "steps undone" ON "steps" ("number") WHERE "undone" = 1;

CREATE TABLE "inverses" (
  "number" INTEGER PRIMARY KEY,
  "step" INTEGER NOT NULL REFERENCES "steps" ("number") ON DELETE CASCADE,
  "table" TEXT NOT NULL,
  "rowId" TEXT NOT NULL,
  "statement" TEXT NOT NULL
) STRICT;
CREATE INDEX "inverses by step" ON "inverses" ("step");

CREATE TABLE "standing" (
  "one" INTEGER PRIMARY KEY CHECK ("one" = 1),
  "revision" INTEGER NOT NULL
) STRICT;
INSERT INTO "standing" ("one", "revision") VALUES (1, 0);
`;
