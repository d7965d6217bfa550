/** What a taught word is of (a source, a group, a device ...), and what may stand in for a pick-up. */
export const meaningsAndStandIns = `
ALTER TABLE "ownWords" ADD COLUMN "of" TEXT NOT NULL DEFAULT 'source';
ALTER TABLE "sources" ADD COLUMN "pickUpInstead" TEXT NOT NULL DEFAULT '';
`;
