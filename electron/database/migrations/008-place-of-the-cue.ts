/** Where the engineer listens, on the stage plot. */
export const placeOfTheCue = `
ALTER TABLE "rigs" ADD COLUMN "cueXM" REAL;
ALTER TABLE "rigs" ADD COLUMN "cueYM" REAL;
`;
