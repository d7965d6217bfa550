/**
 * What stands inside the names of the archive: every three letters in a row, beside the beginnings of words. And the
 * acts that were taken out of it and can still be put back, in a table of their own: a mark behind the documents of an
 * act could not be read without going over those.
 */
export const insideOfNames = `
CREATE VIRTUAL TABLE "archivedNamesInside" USING fts5 (
  "name", "place",
  content = 'archivedNames', content_rowid = 'number',
  tokenize = 'trigram remove_diacritics 1'
);
INSERT INTO "archivedNamesInside" ("archivedNamesInside") VALUES ('rebuild');

CREATE TABLE "removedFromArchive" (
  "act" INTEGER PRIMARY KEY REFERENCES "archivedActs" ("number") ON DELETE CASCADE,
  "removedAt" TEXT NOT NULL
) STRICT;
`;
