/**
 * The PDF library leaves some of its promises to themselves: on a damaged file they are rejected with nobody
 * listening, which would end the thread, although the reading itself goes on or is refused in a sentence. Call it
 * once in a thread that does nothing but read files.
 */
export function ignoreLibraryRejections(): void {
  process.on('unhandledRejection', () => undefined);
}
