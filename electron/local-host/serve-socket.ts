import type { WebSocket } from 'ws';
import type { Service } from '../service/service.ts';

const pingEveryMs = 20_000;

/** No engineer's window sends more; what does is broken or no window. */
export const mostFramesPerSecond = 300;

/** More than this unread by a window: it hangs, and keeping its frames would fill the memory. */
const mostWaitingBytes = 64 * 1024 * 1024;

/** RFC 6455, 7.4.1: 1008 is "policy violation". */
const policyViolation = 1008;

/** Carries the frames of one window. */
export function serveSocket(socket: WebSocket, service: Service): void {
  const connection = service.connect((frame) => {
    if (socket.bufferedAmount > mostWaitingBytes) return socket.terminate();
    socket.send(frame);
  });
  const rate = new Rate(mostFramesPerSecond);
  let alive = true;
  socket.on('message', (data, isBinary) => {
    if (isBinary || !rate.allows(Date.now()) || !connection.take(data.toString()))
      socket.close(policyViolation);
  });
  socket.on('pong', () => {
    alive = true;
  });
  // A frame that is too large or no WebSocket at all: `ws` closes the socket with the right code by itself.
  socket.on('error', () => {});
  const heartbeat = setInterval(() => {
    if (!alive) return socket.terminate();
    alive = false;
    socket.ping();
  }, pingEveryMs);
  socket.on('close', () => {
    clearInterval(heartbeat);
    connection.close();
  });
}

/** Counts frames in whole seconds. */
class Rate {
  readonly #most: number;
  #second = 0;
  #count = 0;

  constructor(most: number) {
    this.#most = most;
  }

  allows(nowMs: number): boolean {
    const second = Math.floor(nowMs / 1000);
    if (second !== this.#second) {
      this.#second = second;
      this.#count = 0;
    }
    this.#count += 1;
    return this.#count <= this.#most;
  }
}
