import { serve } from '../../electron/starting/serve.ts';

/** The serving program as a process of its own, for tests that end it roughly: ROOT of its page, FOLDER of its show. */
const [root, folder] = process.argv.slice(2);
if (root === undefined || folder === undefined) throw new Error('Usage: serve-show.ts ROOT FOLDER');
process.exitCode = await serve(root, folder, { browser: null, why: 'Serving.' });
