import { z } from 'zod';

// The page's policy forbids making code out of text. zod asks when a schema is made, so this comes before all of them.
z.config({ jitless: true });
