/**
 * The tables of the show's own rows. `putOrder` is the order in which rows were put and stays theirs for life (a
 * rowid without a name may be renumbered by VACUUM). References are checked at the end of a transaction, so that
 * a change may put its rows in any order; what goes with a row, or only loses its link, is said here as in
 * core/show/references.ts, and a test holds the two equal.
 */
export const showTables = `
CREATE TABLE "rigs" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "name" TEXT NOT NULL,
  "deskName" TEXT NOT NULL,
  "channelCount" INTEGER NOT NULL,
  "targetLevelDbfs" REAL NOT NULL,
  "headroomDb" REAL NOT NULL,
  "trimMinDb" REAL NOT NULL,
  "trimMaxDb" REAL NOT NULL,
  "gainMinDb" REAL NOT NULL,
  "gainMaxDb" REAL NOT NULL,
  "fullScaleDbu" REAL NOT NULL,
  "gainOwner" TEXT,
  "deskLatencyMs" REAL,
  "talkToCheckedMix" INTEGER NOT NULL CHECK ("talkToCheckedMix" IN (0, 1)),
  "lotsDb" REAL NOT NULL,
  "someDb" REAL NOT NULL,
  "littleDb" REAL NOT NULL,
  "stageWidthM" REAL NOT NULL,
  "stageDepthM" REAL NOT NULL,
  "airTemperatureC" REAL NOT NULL,
  "spareVocalLines" INTEGER NOT NULL,
  "channelsInUsualOrder" INTEGER NOT NULL CHECK ("channelsInUsualOrder" IN (0, 1))
) STRICT;

CREATE TABLE "boxes" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "rigId" TEXT NOT NULL
    REFERENCES "rigs" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "order" INTEGER NOT NULL,
  "name" TEXT NOT NULL,
  "xM" REAL,
  "yM" REAL,
  "reachM" REAL,
  "phantomBankSize" INTEGER NOT NULL
) STRICT;
CREATE INDEX "boxes by rigId" ON "boxes" ("rigId");

CREATE TABLE "sockets" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "boxId" TEXT NOT NULL
    REFERENCES "boxes" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "number" INTEGER NOT NULL,
  "reservedFor" TEXT
) STRICT;
CREATE INDEX "sockets by boxId" ON "sockets" ("boxId");

CREATE TABLE "buses" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "rigId" TEXT NOT NULL
    REFERENCES "rigs" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "number" INTEGER NOT NULL,
  "reservedFor" TEXT
) STRICT;
CREATE INDEX "buses by rigId" ON "buses" ("rigId");

CREATE TABLE "outputs" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "rigId" TEXT NOT NULL
    REFERENCES "rigs" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "boxId" TEXT
    REFERENCES "boxes" ("id") ON DELETE SET NULL DEFERRABLE INITIALLY DEFERRED,
  "place" TEXT NOT NULL,
  "number" INTEGER NOT NULL,
  "name" TEXT NOT NULL,
  "xM" REAL,
  "yM" REAL,
  "reservedFor" TEXT
) STRICT;
CREATE INDEX "outputs by rigId" ON "outputs" ("rigId");
CREATE INDEX "outputs by boxId" ON "outputs" ("boxId");

CREATE TABLE "devices" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "rigId" TEXT NOT NULL
    REFERENCES "rigs" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "order" INTEGER NOT NULL,
  "name" TEXT NOT NULL,
  "kind" TEXT NOT NULL,
  "format" TEXT NOT NULL,
  "model" TEXT NOT NULL,
  "sensitivityDbSpl" REAL,
  "powerW" REAL,
  "listeningDistanceM" REAL,
  "frequencyMhz" REAL,
  "latencyMs" REAL,
  "limiter" TEXT,
  "outputId" TEXT
    REFERENCES "outputs" ("id") ON DELETE SET NULL DEFERRABLE INITIALLY DEFERRED,
  "secondOutputId" TEXT
    REFERENCES "outputs" ("id") ON DELETE SET NULL DEFERRABLE INITIALLY DEFERRED,
  "forCue" INTEGER NOT NULL CHECK ("forCue" IN (0, 1)),
  "reservedFor" TEXT
) STRICT;
CREATE INDEX "devices by rigId" ON "devices" ("rigId");
CREATE INDEX "devices by outputId" ON "devices" ("outputId");
CREATE INDEX "devices by secondOutputId" ON "devices" ("secondOutputId");

CREATE TABLE "stockItems" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "rigId" TEXT NOT NULL
    REFERENCES "rigs" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "order" INTEGER NOT NULL,
  "kind" TEXT NOT NULL,
  "name" TEXT NOT NULL,
  "count" INTEGER NOT NULL,
  "handOutMinutes" REAL NOT NULL,
  "returnMinutes" REAL NOT NULL,
  "chargeMinutes" REAL NOT NULL
) STRICT;
CREATE INDEX "stockItems by rigId" ON "stockItems" ("rigId");

CREATE TABLE "cueOutputs" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "rigId" TEXT NOT NULL
    REFERENCES "rigs" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "name" TEXT NOT NULL,
  "kind" TEXT NOT NULL,
  "format" TEXT NOT NULL,
  "outputId" TEXT
    REFERENCES "outputs" ("id") ON DELETE SET NULL DEFERRABLE INITIALLY DEFERRED,
  "secondOutputId" TEXT
    REFERENCES "outputs" ("id") ON DELETE SET NULL DEFERRABLE INITIALLY DEFERRED,
  "busId" TEXT
    REFERENCES "buses" ("id") ON DELETE SET NULL DEFERRABLE INITIALLY DEFERRED,
  "deviceId" TEXT
    REFERENCES "devices" ("id") ON DELETE SET NULL DEFERRABLE INITIALLY DEFERRED,
  "takenFrom" TEXT NOT NULL,
  "distanceFromStageM" REAL
) STRICT;
CREATE INDEX "cueOutputs by rigId" ON "cueOutputs" ("rigId");
CREATE INDEX "cueOutputs by outputId" ON "cueOutputs" ("outputId");
CREATE INDEX "cueOutputs by secondOutputId" ON "cueOutputs" ("secondOutputId");
CREATE INDEX "cueOutputs by busId" ON "cueOutputs" ("busId");
CREATE INDEX "cueOutputs by deviceId" ON "cueOutputs" ("deviceId");

CREATE TABLE "days" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "rigId" TEXT NOT NULL
    REFERENCES "rigs" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "order" INTEGER NOT NULL,
  "name" TEXT NOT NULL,
  "date" TEXT NOT NULL,
  "crewSize" INTEGER NOT NULL,
  "changeoverMinutes" REAL NOT NULL
) STRICT;
CREATE INDEX "days by rigId" ON "days" ("rigId");

CREATE TABLE "acts" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "dayId" TEXT NOT NULL
    REFERENCES "days" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "order" INTEGER NOT NULL,
  "name" TEXT NOT NULL,
  "state" TEXT NOT NULL,
  "startMinute" INTEGER,
  "endMinute" INTEGER,
  "soundCheckStartMinute" INTEGER,
  "soundCheckEndMinute" INTEGER,
  "prePatch" INTEGER NOT NULL CHECK ("prePatch" IN (0, 1)),
  "lineCheckAhead" INTEGER NOT NULL CHECK ("lineCheckAhead" IN (0, 1)),
  "splitBy" TEXT,
  "splitPhantomBy" TEXT,
  "ownDeskFile" INTEGER NOT NULL CHECK ("ownDeskFile" IN (0, 1)),
  "deskFileMapped" INTEGER NOT NULL CHECK ("deskFileMapped" IN (0, 1)),
  "notes" TEXT NOT NULL
) STRICT;
CREATE INDEX "acts by dayId" ON "acts" ("dayId");

CREATE TABLE "performers" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "actId" TEXT NOT NULL
    REFERENCES "acts" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "order" INTEGER NOT NULL,
  "name" TEXT NOT NULL,
  "role" TEXT NOT NULL,
  "needsClick" INTEGER NOT NULL CHECK ("needsClick" IN (0, 1)),
  "place" TEXT NOT NULL,
  "xM" REAL,
  "yM" REAL
) STRICT;
CREATE INDEX "performers by actId" ON "performers" ("actId");

CREATE TABLE "sources" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "actId" TEXT NOT NULL
    REFERENCES "acts" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "order" INTEGER NOT NULL,
  "riderLine" INTEGER,
  "name" TEXT NOT NULL,
  "kind" TEXT NOT NULL,
  "pairSourceId" TEXT
    REFERENCES "sources" ("id") ON DELETE SET NULL DEFERRABLE INITIALLY DEFERRED,
  "pickUp" TEXT,
  "pickUpModel" TEXT NOT NULL,
  "phantom" TEXT NOT NULL,
  "sensitivityMvPerPa" REAL,
  "expectedDbSpl" REAL,
  "expectedDbu" REAL,
  "pickUpLatencyMs" REAL,
  "frequencyMhz" REAL,
  "pattern" TEXT,
  "aimDeg" REAL,
  "tiltDeg" REAL,
  "heightM" REAL,
  "gainDb" REAL,
  "trimmedAtGainDb" REAL,
  "gainOwner" TEXT,
  "returnsMixId" TEXT
    REFERENCES "mixes" ("id") ON DELETE SET NULL DEFERRABLE INITIALLY DEFERRED,
  "returnsCueOutputId" TEXT
    REFERENCES "cueOutputs" ("id") ON DELETE SET NULL DEFERRABLE INITIALLY DEFERRED,
  "stand" TEXT NOT NULL,
  "riser" TEXT NOT NULL,
  "sharedLine" TEXT NOT NULL,
  "place" TEXT NOT NULL,
  "xM" REAL,
  "yM" REAL,
  "performerId" TEXT
    REFERENCES "performers" ("id") ON DELETE SET NULL DEFERRABLE INITIALLY DEFERRED,
  "broughtBy" TEXT,
  "optional" INTEGER NOT NULL CHECK ("optional" IN (0, 1)),
  "audience" TEXT NOT NULL,
  "notes" TEXT NOT NULL
) STRICT;
CREATE INDEX "sources by actId" ON "sources" ("actId");
CREATE INDEX "sources by pairSourceId" ON "sources" ("pairSourceId");
CREATE INDEX "sources by performerId" ON "sources" ("performerId");
CREATE INDEX "sources by returnsMixId" ON "sources" ("returnsMixId");
CREATE INDEX "sources by returnsCueOutputId" ON "sources" ("returnsCueOutputId");

CREATE TABLE "mixes" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "actId" TEXT NOT NULL
    REFERENCES "acts" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "order" INTEGER NOT NULL,
  "name" TEXT NOT NULL,
  "deviceKind" TEXT,
  "format" TEXT,
  "deviceCount" INTEGER NOT NULL,
  "ownDevice" INTEGER CHECK ("ownDevice" IN (0, 1)),
  "mixedAt" TEXT NOT NULL,
  "place" TEXT NOT NULL,
  "xM" REAL,
  "yM" REAL,
  "aimDeg" REAL,
  "notes" TEXT NOT NULL
) STRICT;
CREATE INDEX "mixes by actId" ON "mixes" ("actId");

CREATE TABLE "listeners" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "mixId" TEXT NOT NULL
    REFERENCES "mixes" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "performerId" TEXT NOT NULL
    REFERENCES "performers" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED
) STRICT;
CREATE INDEX "listeners by mixId" ON "listeners" ("mixId");
CREATE INDEX "listeners by performerId" ON "listeners" ("performerId");

CREATE TABLE "wishes" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "mixId" TEXT NOT NULL
    REFERENCES "mixes" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "order" INTEGER NOT NULL,
  "words" TEXT NOT NULL,
  "sourceId" TEXT
    REFERENCES "sources" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "group" TEXT,
  "sameAsMixId" TEXT
    REFERENCES "mixes" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "amount" TEXT,
  "levelDb" REAL,
  "confirmed" INTEGER NOT NULL CHECK ("confirmed" IN (0, 1))
) STRICT;
CREATE INDEX "wishes by mixId" ON "wishes" ("mixId");
CREATE INDEX "wishes by sourceId" ON "wishes" ("sourceId");
CREATE INDEX "wishes by sameAsMixId" ON "wishes" ("sameAsMixId");

CREATE TABLE "copies" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "sourceId" TEXT NOT NULL
    REFERENCES "sources" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "purpose" TEXT NOT NULL,
  "wanted" INTEGER NOT NULL CHECK ("wanted" IN (0, 1)),
  "locked" INTEGER NOT NULL CHECK ("locked" IN (0, 1)),
  "channel" INTEGER,
  "trimDb" REAL NOT NULL,
  "polarityInverted" INTEGER NOT NULL CHECK ("polarityInverted" IN (0, 1)),
  "latencyMs" REAL NOT NULL,
  "inMainMix" INTEGER CHECK ("inMainMix" IN (0, 1))
) STRICT;
CREATE INDEX "copies by sourceId" ON "copies" ("sourceId");

CREATE TABLE "alternates" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "sourceId" TEXT NOT NULL
    REFERENCES "sources" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "order" INTEGER NOT NULL,
  "kind" TEXT NOT NULL,
  "name" TEXT NOT NULL,
  "socketId" TEXT
    REFERENCES "sockets" ("id") ON DELETE SET NULL DEFERRABLE INITIALLY DEFERRED,
  "inUse" INTEGER NOT NULL CHECK ("inUse" IN (0, 1))
) STRICT;
CREATE INDEX "alternates by sourceId" ON "alternates" ("sourceId");
CREATE INDEX "alternates by socketId" ON "alternates" ("socketId");

CREATE TABLE "decisions" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "actId" TEXT NOT NULL
    REFERENCES "acts" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "locked" INTEGER NOT NULL CHECK ("locked" IN (0, 1)),
  "about" TEXT NOT NULL,
  "sourceId" TEXT
    REFERENCES "sources" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "socketId" TEXT
    REFERENCES "sockets" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "on" INTEGER CHECK ("on" IN (0, 1)),
  "mixId" TEXT
    REFERENCES "mixes" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "busId" TEXT
    REFERENCES "buses" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "outputId" TEXT
    REFERENCES "outputs" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "deviceId" TEXT
    REFERENCES "devices" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "cueOutputId" TEXT
    REFERENCES "cueOutputs" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "purpose" TEXT,
  "tap" TEXT,
  "levelDb" REAL,
  "returnSourceId" TEXT
    REFERENCES "sources" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED
) STRICT;
CREATE INDEX "decisions by actId" ON "decisions" ("actId");
CREATE INDEX "decisions by sourceId" ON "decisions" ("sourceId");
CREATE INDEX "decisions by mixId" ON "decisions" ("mixId");
CREATE INDEX "decisions by returnSourceId" ON "decisions" ("returnSourceId");
CREATE INDEX "decisions by socketId" ON "decisions" ("socketId");
CREATE INDEX "decisions by busId" ON "decisions" ("busId");
CREATE INDEX "decisions by outputId" ON "decisions" ("outputId");
CREATE INDEX "decisions by deviceId" ON "decisions" ("deviceId");
CREATE INDEX "decisions by cueOutputId" ON "decisions" ("cueOutputId");

CREATE TABLE "riders" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "actId" TEXT NOT NULL
    REFERENCES "acts" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "order" INTEGER NOT NULL,
  "fileName" TEXT NOT NULL,
  "receivedAt" TEXT NOT NULL,
  "writtenOn" TEXT NOT NULL,
  "validUntil" TEXT NOT NULL,
  "grid" TEXT NOT NULL CHECK (json_valid("grid"))
) STRICT;
CREATE INDEX "riders by actId" ON "riders" ("actId");

CREATE TABLE "answers" (
  "putOrder" INTEGER PRIMARY KEY,
  "id" TEXT NOT NULL UNIQUE,
  "riderId" TEXT NOT NULL
    REFERENCES "riders" ("id") ON DELETE CASCADE DEFERRABLE INITIALLY DEFERRED,
  "questionKey" TEXT NOT NULL,
  "value" TEXT NOT NULL
) STRICT;
CREATE INDEX "answers by riderId" ON "answers" ("riderId");
`;
