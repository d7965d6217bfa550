/**
 * What happened to acts on their day, apart from their plans; and the archive of acts, which spans shows: each with
 * its plan and its run as compressed documents (so that an act outlives every change of the tables), and every name
 * in it, indexed by the beginnings of its words. The index holds no text of its own: it is that of `archivedNames`.
 */
export const asRanAndArchive = `
CREATE TABLE "actRuns" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "actId" TEXT NOT NULL
    REFERENCES "acts" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "beganAt" TEXT,
  "endedAt" TEXT
) STRICT;
CREATE INDEX "actRuns by actId" ON "actRuns" ("actId");

CREATE TABLE "lineResults" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "actId" TEXT NOT NULL
    REFERENCES "acts" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "sourceId" TEXT NOT NULL
    REFERENCES "sources" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "found" TEXT NOT NULL,
  "cameSourceId" TEXT
    REFERENCES "sources" ("id") ON DELETE SET NULL DEFERRABLE INITIALLY DEFERRED,
  "foundAt" TEXT NOT NULL
) STRICT;
CREATE INDEX "lineResults by actId" ON "lineResults" ("actId");
CREATE INDEX "lineResults by sourceId" ON "lineResults" ("sourceId");
CREATE INDEX "lineResults by cameSourceId" ON "lineResults" ("cameSourceId");

CREATE TABLE "ranLevels" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "actId" TEXT NOT NULL
    REFERENCES "acts" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "mixId" TEXT NOT NULL
    REFERENCES "mixes" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "sourceId" TEXT NOT NULL
    REFERENCES "sources" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "fromDb" REAL,
  "levelDb" REAL,
  "changedAt" TEXT NOT NULL
) STRICT;
CREATE INDEX "ranLevels by actId" ON "ranLevels" ("actId");
CREATE INDEX "ranLevels by mixId" ON "ranLevels" ("mixId");
CREATE INDEX "ranLevels by sourceId" ON "ranLevels" ("sourceId");

CREATE TABLE "runNotes" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "actId" TEXT NOT NULL
    REFERENCES "acts" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "mixId" TEXT
    REFERENCES "mixes" ("id") ON DELETE SET NULL DEFERRABLE INITIALLY DEFERRED,
  "sourceId" TEXT
    REFERENCES "sources" ("id") ON DELETE SET NULL DEFERRABLE INITIALLY DEFERRED,
  "text" TEXT NOT NULL,
  "notedAt" TEXT NOT NULL
) STRICT;
CREATE INDEX "runNotes by actId" ON "runNotes" ("actId");
CREATE INDEX "runNotes by mixId" ON "runNotes" ("mixId");
CREATE INDEX "runNotes by sourceId" ON "runNotes" ("sourceId");

CREATE TABLE "archivedActs" (
  "number" INTEGER PRIMARY KEY,
  "actId" TEXT NOT NULL UNIQUE,
  "actName" TEXT NOT NULL,
  "dayName" TEXT NOT NULL,
  "date" TEXT NOT NULL,
  "rigName" TEXT NOT NULL,
  "device" TEXT NOT NULL,
  "plannedAt" TEXT NOT NULL,
  "planned" BLOB NOT NULL,
  "ranAt" TEXT,
  "ran" BLOB
) STRICT;
CREATE INDEX "archivedActs by ranAt" ON "archivedActs" ("ranAt") WHERE "ranAt" IS NOT NULL;

CREATE TABLE "archivedNames" (
  "number" INTEGER PRIMARY KEY,
  "act" INTEGER NOT NULL REFERENCES "archivedActs" ("number") ON DELETE CASCADE,
  "kind" TEXT NOT NULL CHECK ("kind" IN ('act', 'performer', 'source')),
  "name" TEXT NOT NULL,
  "place" TEXT NOT NULL
) STRICT;
CREATE INDEX "archivedNames by act" ON "archivedNames" ("act");

CREATE VIRTUAL TABLE "archivedNamesIndex" USING fts5 (
  "kind", "name", "place",
  content = 'archivedNames', content_rowid = 'number',
  tokenize = 'unicode61 remove_diacritics 2', prefix = '1 2 3'
);
`;
