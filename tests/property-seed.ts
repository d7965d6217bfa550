import fc from 'fast-check';

/**
 * Property tests make the same cases in every run, so that a change is what makes them fail and no luck. Another
 * seed: `FOLDBOOK_SEED=7 npm test -- tests/property`. Cases nobody has seen are the business of `npm run fuzz`.
 */
fc.configureGlobal({ seed: Number(process.env.FOLDBOOK_SEED ?? 20_260_101) });
