import { randomBytes, timingSafeEqual } from 'node:crypto';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Duplex } from 'node:stream';
import { WebSocketServer } from 'ws';
import { socketPath, tokenFromProtocols } from '../../core/contract/bridge.ts';
import type { Service } from '../service/service.ts';
import { largestFrameBytes } from '../service/service.ts';
import { OneTimeEntries } from './one-time-entries.ts';
import type { PageFile } from './page-files.ts';
import { pageHeaders } from './page-headers.ts';
import { type CameForward, comeForwardPath, isSecret, newSecret, secretHeader } from './second-start.ts';
import { serveSocket } from './serve-socket.ts';

export type LocalHost = {
  /** The address to open in a browser of this machine; its fragment is the token. */
  address: string;
  /**
   * An address that works once, within half a minute, and leads to `address`: for a command line, which other
   * users of the machine can read.
   */
  entryAddress(): string;
  close(): Promise<void>;
};

/** Where a host is found, and by whom. */
export type LocalAddress = { port: number; token: string };

const mostConnections = 64;
const mostSockets = 16;

/**
 * Serves the page and its calls on a free port of the loopback interface, and nowhere else. Whoever knows
 * `secret` (a second start by the same user) is given an entry, and its windows are told to come forward. `before`:
 * the address of a program that was killed, taken again where it is free.
 */
export async function startLocalHost(
  service: Service,
  files: ReadonlyMap<string, PageFile>,
  secret = newSecret(),
  before: LocalAddress | null = null,
): Promise<LocalHost> {
  const entries = new OneTimeEntries();
  const server = createServer({
    headersTimeout: 3_000,
    requestTimeout: 5_000,
    connectionsCheckingInterval: 1_000,
    keepAliveTimeout: 5_000,
  });
  server.maxConnections = mostConnections;
  const again = before && (await listen(server, before.port).catch(() => null));
  const port = again ?? (await listen(server, 0));
  const token = again !== null && before ? before.token : randomBytes(24).toString('base64url');
  const host = `127.0.0.1:${port}`;

  server.on('request', (request, response) => {
    if (request.headers.host !== host) return answerPlain(response, 403, 'Wrong host.');
    if (request.method === 'POST' && request.url === comeForwardPath)
      return isSecret(request.headers[secretHeader], secret)
        ? answerPlain(response, 200, JSON.stringify(comeForward(service, `http://${host}${entries.make()}`)))
        : answerPlain(response, 403, 'Wrong secret.');
    if (request.method !== 'GET' && request.method !== 'HEAD') return answerPlain(response, 405, 'Only GET.');
    if (entries.use(request.url ?? '')) return redirect(response, `http://${host}/#${token}`);
    const file = files.get(request.url ?? '');
    if (!file) return answerPlain(response, 404, 'There is nothing here.');
    response.writeHead(200, pageHeaders(file.type, `ws://${host}`));
    response.end(request.method === 'HEAD' ? undefined : file.bytes);
  });

  const sockets = new WebSocketServer({
    noServer: true,
    clientTracking: true,
    maxPayload: largestFrameBytes,
    perMessageDeflate: false,
    handleProtocols: (offered) => [...offered][0] ?? false,
  });
  server.on('upgrade', (request: IncomingMessage, stream: Duplex, head: Buffer) => {
    if (mayConnect(request, host, token) && sockets.clients.size < mostSockets)
      sockets.handleUpgrade(request, stream, head, (socket) => serveSocket(socket, service));
    else stream.end('HTTP/1.1 403 Forbidden\r\nConnection: close\r\nContent-Length: 0\r\n\r\n');
  });

  return {
    address: `http://${host}/#${token}`,
    entryAddress: () => `http://${host}${entries.make()}`,
    close: async () => {
      for (const socket of sockets.clients) socket.terminate();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

/** A page cannot put its own window in front of others; it can say where it is, and the second start says so too. */
function comeForward(service: Service, entry: string): CameForward {
  service.tellAll({ push: 'come forward' });
  return { entry, windowCount: service.windowCount };
}

/** Listens on a port of the loopback interface, 0 for any that is free; answers which. */
function listen(server: Server, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => {
      server.off('error', reject);
      resolve((server.address() as AddressInfo).port);
    });
  });
}

/**
 * Only a page of this host with this start's token. The Host keeps out pages that lead a name of theirs to the
 * loopback address, the Origin other pages in the same browser, the token other programs and users.
 */
function mayConnect({ url, headers }: IncomingMessage, host: string, token: string): boolean {
  const offered = (headers['sec-websocket-protocol'] ?? '').split(',').map((it) => it.trim());
  const given = Buffer.from(tokenFromProtocols(offered) ?? '');
  const wanted = Buffer.from(token);
  return (
    url === socketPath &&
    headers.host === host &&
    headers.origin === `http://${host}` &&
    given.length === wanted.length &&
    timingSafeEqual(given, wanted)
  );
}

function answerPlain(response: ServerResponse, status: number, text: string): void {
  response.writeHead(status, { ...pageHeaders('text/plain; charset=utf-8', null), connection: 'close' });
  response.end(text);
}

function redirect(response: ServerResponse, address: string): void {
  response.writeHead(303, { ...pageHeaders('text/plain; charset=utf-8', null), location: address });
  response.end();
}
