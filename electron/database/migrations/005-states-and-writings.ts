/**
 * Named states of an act or a day, each as a document of the show (never as statements, so that a state outlives
 * every change of the tables), and who wrote what when: every write with its device and the rows it touched.
 */
export const statesAndWritings = `
CREATE TABLE "states" (
  "number" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "ofTable" TEXT NOT NULL CHECK ("ofTable" IN ('acts', 'days')),
  "ofId" TEXT NOT NULL,
  "name" TEXT NOT NULL,
  "keptAt" TEXT NOT NULL,
  "device" TEXT NOT NULL,
  "revision" INTEGER NOT NULL,
  "document" TEXT NOT NULL
) STRICT;
CREATE INDEX "states by what they are of" ON "states" ("ofTable", "ofId");

CREATE TABLE "writings" (
  "revision" INTEGER PRIMARY KEY,
  "madeAt" TEXT NOT NULL,
  "device" TEXT NOT NULL,
  "did" TEXT NOT NULL CHECK ("did" IN ('done', 'undone', 'done again')),
  "label" TEXT NOT NULL,
  "rows" TEXT NOT NULL
) STRICT;
`;
