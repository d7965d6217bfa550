import type { Id } from './rig.ts';

/** The key under which maps hold what one source is in one mix. */
export const feedKey = ({ mixId, sourceId }: { mixId: Id; sourceId: Id }): string => `${mixId} ${sourceId}`;
