/**
 * The page's policy forbids making code out of text, which zod tries as soon as a schema is made. So this is set
 * before any module that makes one is asked for; it is where zod itself keeps its settings.
 */
Object.assign(globalThis, { __zod_globalConfig: { jitless: true } });

void import('./window.tsx');
