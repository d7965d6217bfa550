/** The one IPC channel between page and main process; both ways it carries frames of the contract. */
export const frameChannel = 'frame';

/** The scheme under which Electron's window loads the page: unlike a file address it has an origin of its own. */
export const pageScheme = 'foldbook';
export const pageOrigin = `${pageScheme}://page`;
