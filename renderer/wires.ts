import { type Bridge, socketPath, socketProtocols, tokenKey } from '../core/contract/bridge.ts';
import type { Wire } from './connection.ts';

/** Electron's bridge: there as long as the window is. */
export function bridgeWire(bridge: Bridge): Wire {
  return {
    send(frame) {
      bridge.send(JSON.stringify(frame));
      return true;
    },
    start(heard) {
      bridge.onFrame((text) => heard.frame(parsedFrame(text)));
      heard.reached();
    },
  };
}

const firstWaitMs = 250;
const longestWaitMs = 4000;

/** A WebSocket to the local host; when it is lost it is opened again, at growing intervals. */
export function socketWire(token: string): Wire {
  let socket: WebSocket | null = null;
  return {
    send(frame) {
      if (socket?.readyState !== WebSocket.OPEN) return false;
      socket.send(JSON.stringify(frame));
      return true;
    },
    start(heard) {
      let waitMs = firstWaitMs;
      const open = () => {
        socket = new WebSocket(`ws://${location.host}${socketPath}`, socketProtocols(token));
        socket.onopen = () => {
          waitMs = firstWaitMs;
          heard.reached();
        };
        socket.onmessage = ({ data }) => heard.frame(parsedFrame(String(data)));
        socket.onclose = () => {
          heard.lost();
          setTimeout(open, waitMs);
          waitMs = Math.min(waitMs * 2, longestWaitMs);
        };
      };
      open();
    },
  };
}

/** The token of the address this page was opened with, taken out of the address bar; null where there is none. */
export function takeToken(): string | null {
  const fragment = location.hash.slice(1);
  // A place in the program has a slash in it, a token has none.
  if (fragment !== '' && !fragment.includes('/')) {
    sessionStorage.setItem(tokenKey, fragment);
    history.replaceState(null, '', '#');
  }
  return sessionStorage.getItem(tokenKey);
}

function parsedFrame(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
