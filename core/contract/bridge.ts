/**
 * How a page reaches the shell. Frames are JSON texts of `Request` (page to shell), `Reply` and `Push` (shell to
 * page); a page looks for the bridge first and opens the socket where there is none.
 *
 * - In Electron the preload puts a `Bridge` at `window.foldbook`. There is nothing else on it.
 * - In a browser the page opens `ws://<its own host>/socket` and offers `socketProtocols(token)`. The token is the
 *   fragment of the address the page was opened with (`http://127.0.0.1:PORT/#TOKEN`): a fragment is never sent to
 *   a server, a log or another site. The page keeps it in `sessionStorage` under `tokenKey` (so that a reload
 *   works; no other port of this machine can read it, as it could a cookie), and takes it out of the address bar.
 *   A page without a token cannot connect: it says to open the address that the program printed.
 */
export type Bridge = {
  /** Sends one frame to the shell. Frames keep their order. */
  send(frame: string): void;
  /** Calls `take` with every frame of the shell from now on. A page calls it once, before it sends. */
  onFrame(take: (frame: string) => void): void;
};

declare global {
  interface Window {
    foldbook?: Bridge;
  }
}

export const socketPath = '/socket';
export const tokenKey = 'foldbook-token';

const protocolName = 'foldbook';
const tokenPrefix = 'token.';

/** What a page offers as WebSocket subprotocols: the name, which the host picks, and the token it checks. */
export function socketProtocols(token: string): string[] {
  return [protocolName, tokenPrefix + token];
}

/** The token among the subprotocols that a page offered, or null where name or token is missing. */
export function tokenFromProtocols(offered: readonly string[]): string | null {
  if (!offered.includes(protocolName)) return null;
  const token = offered.find((it) => it.startsWith(tokenPrefix));
  return token === undefined ? null : token.slice(tokenPrefix.length);
}
