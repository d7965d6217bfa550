import { WebSocket } from 'ws';
import { socketPath, socketProtocols } from '../../core/contract/bridge.ts';
import { TestWindow } from './window.ts';

/** A window over a WebSocket to the address that the program prints, as a page would open it. */
export async function openSocket(address: string): Promise<{ window: TestWindow; socket: WebSocket }> {
  const { host, origin, hash } = new URL(address);
  const socket = new WebSocket(`ws://${host}${socketPath}`, socketProtocols(hash.slice(1)), { origin });
  await new Promise((resolve, reject) => {
    socket.once('open', resolve);
    socket.once('error', reject);
  });
  const window = new TestWindow({
    send: (frame) => socket.send(frame),
    onFrame: (take) => socket.on('message', (data) => take(data.toString())),
  });
  return { window, socket };
}
