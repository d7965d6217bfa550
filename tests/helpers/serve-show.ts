import { serve } from '../../electron/starting/serve.ts';

/** The serving program as a process of its own: ROOT of its page, FOLDER of its show, and a BROWSER or none. */
const [root, folder, browser = null] = process.argv.slice(2);
if (root === undefined || folder === undefined) throw new Error('Usage: serve-show.ts ROOT FOLDER [BROWSER]');
process.exitCode = await serve(root, folder, { browser, why: 'Serving.' });
