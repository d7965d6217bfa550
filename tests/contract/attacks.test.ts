import { EventEmitter } from 'node:events';
import { type IncomingHttpHeaders, request } from 'node:http';
import { connect } from 'node:net';
import { networkInterfaces } from 'node:os';
import { describe, expect, onTestFinished, test } from 'vitest';
import { WebSocket } from 'ws';
import { socketProtocols } from '../../core/contract/bridge.ts';
import { mostFramesPerSecond, serveSocket } from '../../electron/local-host/serve-socket.ts';
import { largestFrameBytes } from '../../electron/service/service.ts';
import { startSmallHost } from '../helpers/local-host.ts';
import { openSocket } from '../helpers/socket.ts';

type Asked = { path?: string; method?: string; headers?: Record<string, string> };
type Answered = { status: number; headers: IncomingHttpHeaders; body: string };

/** Asks with exactly the path and headers given; fetch would tidy them first. */
function ask(address: string, { path = '/', method = 'GET', headers = {} }: Asked): Promise<Answered> {
  const { hostname, port } = new URL(address);
  return new Promise((resolve, reject) => {
    const asking = request({ hostname, port, path, method, headers }, (response) => {
      const parts: Buffer[] = [];
      response.on('data', (part) => parts.push(part));
      response.on('end', () =>
        resolve({
          status: response.statusCode ?? 0,
          headers: response.headers,
          body: Buffer.concat(parts).toString(),
        }),
      );
    });
    asking.on('error', reject);
    asking.end();
  });
}

/** Whether a socket with these doings is let in. */
function isLetIn(url: string, protocols: string[], headers: Record<string, string>): Promise<boolean> {
  const socket = new WebSocket(url, protocols, { headers });
  onTestFinished(() => socket.terminate());
  return new Promise((resolve) => {
    socket.once('open', () => resolve(true));
    socket.once('error', () => resolve(false));
  });
}

const closeCode = (socket: WebSocket) => new Promise<number>((resolve) => socket.once('close', resolve));

describe('the local host gives its page', () => {
  test('with a policy that lets nothing in from elsewhere and nothing inline', async () => {
    const { address } = await startSmallHost();
    const { status, headers } = await ask(address, {});
    expect(status).toBe(200);
    const policy = String(headers['content-security-policy']);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toMatch(/unsafe|\*|https?:/);
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(headers['access-control-allow-origin']).toBeUndefined();
  });

  test.each([
    '/../package.json',
    '/..%2fpackage.json',
    '/%2e%2e/%2e%2e/etc/passwd',
    '/assets/../../package.json',
    '/assets/..\\..\\package.json',
    '//etc/passwd',
    '/assets/main.js%00.html',
    '/assets/',
    '/index.html/..',
    'http://elsewhere.example/',
    '/festival.foldbook',
  ])('but nothing at %s', async (path) => {
    const { address } = await startSmallHost();
    expect((await ask(address, { path })).status).toBe(404);
  });

  test.each(['elsewhere.example', 'localhost:1', '127.0.0.1', 'localhost', '[::1]'])(
    'but not to a request for the host %s, as a name that leads here would make',
    async (host) => {
      const { address } = await startSmallHost();
      expect((await ask(address, { headers: { host } })).status).toBe(403);
    },
  );

  test.each(['POST', 'PUT', 'DELETE', 'OPTIONS', 'TRACE'])('but does not answer %s', async (method) => {
    const { address } = await startSmallHost();
    expect((await ask(address, { method })).status).toBe(405);
  });

  test('by an address for the command line once, and then no more', async () => {
    const { address, entryAddress } = await startSmallHost();
    const path = new URL(entryAddress()).pathname;
    const first = await ask(address, { path });
    expect(first).toMatchObject({ status: 303, headers: { location: address } });
    expect((await ask(address, { path })).status).toBe(404);
  });

  test('and never tells the token to who only asks for the page', async () => {
    const { address } = await startSmallHost();
    const token = new URL(address).hash.slice(1);
    for (const path of ['/', '/assets/main.js', '/enter/', '/enter/x']) {
      const answer = await ask(address, { path });
      expect(JSON.stringify(answer)).not.toContain(token);
    }
  });

  test('on the loopback interface and on no other', async () => {
    const { address } = await startSmallHost();
    const others = Object.values(networkInterfaces())
      .flatMap((it) => it ?? [])
      .filter(({ internal, family }) => !internal && family === 'IPv4');
    const port = Number(new URL(address).port);
    for (const { address: outside } of [...others, { address: '127.0.0.2' }]) {
      const socket = connect({ host: outside, port });
      onTestFinished(() => {
        socket.destroy();
      });
      const reached = await new Promise((resolve) => {
        socket.once('connect', () => resolve(true));
        socket.once('error', () => resolve(false));
      });
      expect(reached, outside).toBe(false);
    }
  });
});

describe('the local host lets a window in', () => {
  test('with the right Host, Origin and token', async () => {
    const { address } = await startSmallHost();
    const { host, origin, hash } = new URL(address);
    expect(await isLetIn(`ws://${host}/socket`, socketProtocols(hash.slice(1)), { origin })).toBe(true);
  });

  type Doings = { host: string; origin: string; token: string };
  test.each<
    [string, (it: Doings) => { path?: string; protocols?: string[]; headers?: Record<string, string> }]
  >([
    ['no Origin', () => ({ headers: {} })],
    ['the Origin of another site', () => ({ headers: { origin: 'https://elsewhere.example' } })],
    ['the Origin "null" of a file or a sandboxed frame', () => ({ headers: { origin: 'null' } })],
    ['the Origin of another port of this machine', () => ({ headers: { origin: 'http://127.0.0.1:1' } })],
    ['a Host that only leads here', ({ origin }) => ({ headers: { origin, host: 'elsewhere.example' } })],
    ['no token', () => ({ protocols: ['foldbook'] })],
    ['no protocol at all', () => ({ protocols: [] })],
    [
      'a wrong token of the right length',
      ({ token }) => ({ protocols: socketProtocols('x'.repeat(token.length)) }),
    ],
    ['the beginning of the token', ({ token }) => ({ protocols: socketProtocols(token.slice(0, -1)) })],
    ['the token and more', ({ token }) => ({ protocols: socketProtocols(`${token}x`) })],
    ['the token without the name', ({ token }) => ({ protocols: [`token.${token}`] })],
    ['another path', () => ({ path: '/socket/..' })],
  ])('but not with %s', async (_what, wrong) => {
    const { address } = await startSmallHost();
    const { host, origin, hash } = new URL(address);
    const token = hash.slice(1);
    const {
      path = '/socket',
      protocols = socketProtocols(token),
      headers = { origin },
    } = wrong({ host, origin, token });
    expect(await isLetIn(`ws://${host}${path}`, protocols, headers)).toBe(false);
  });

  test('but not seventeen at once', async () => {
    const { address } = await startSmallHost();
    for (let count = 0; count < 16; count++) await openSocket(address);
    await expect(openSocket(address)).rejects.toThrow('403');
  });
});

describe('a window that misbehaves', () => {
  test.each([
    ['text that is no JSON', 'kick drum'],
    ['JSON that is no request', '[1,2]'],
    ['a request without a number', '{"call":"show.open","input":{}}'],
    ['a request with a negative number', '{"id":-1,"call":"show.open","input":{}}'],
    ['a request with one field too many', '{"id":1,"call":"show.open","input":{},"as":"root"}'],
  ])('is put out after %s, and the others work on', async (_what, frame) => {
    const { address } = await startSmallHost();
    const [bad, good] = await Promise.all([openSocket(address), openSocket(address)]);
    bad.window.sendRaw(frame);
    expect(await closeCode(bad.socket)).toBe(1008);
    expect(await good.window.call('show.open', {})).toMatchObject({ ok: true });
  });

  test('is put out after a frame of bytes', async () => {
    const { address } = await startSmallHost();
    const { socket } = await openSocket(address);
    socket.send(Buffer.from([1, 2, 3]));
    expect(await closeCode(socket)).toBe(1008);
  });

  test('is put out after a frame larger than the largest rider', async () => {
    const { address } = await startSmallHost();
    const { socket } = await openSocket(address);
    socket.on('error', () => {});
    socket.send('x'.repeat(largestFrameBytes + 1));
    // RFC 6455, 7.4.1: 1009 is "message too big".
    expect(await closeCode(socket)).toBe(1009);
  });

  test('is put out when it sends faster than any hand', async () => {
    const { address } = await startSmallHost();
    const { window, socket } = await openSocket(address);
    for (let count = 0; count < 2 * mostFramesPerSecond + 1; count++)
      window.sendRaw(JSON.stringify({ id: count, call: 'show.undo', input: {} }));
    expect(await closeCode(socket)).toBe(1008);
  });

  test('is put out when it reads no answers, before they fill the memory', async () => {
    const { service } = await startSmallHost();
    const deaf = Object.assign(new EventEmitter(), {
      bufferedAmount: 0,
      sent: 0,
      isOut: false,
      send: () => {
        deaf.sent += 1;
      },
      terminate: () => {
        deaf.isOut = true;
      },
      close: () => undefined,
      ping: () => undefined,
    });
    serveSocket(deaf as unknown as WebSocket, service);
    service.tellAll({ push: 'come forward' });
    expect([deaf.sent, deaf.isOut]).toEqual([1, false]);
    deaf.bufferedAmount = 65 * 1024 * 1024;
    service.tellAll({ push: 'come forward' });
    deaf.emit('close');
    expect([deaf.sent, deaf.isOut]).toEqual([1, true]);
  });

  test('that says nothing after knocking is hung up on', async () => {
    const { address } = await startSmallHost();
    const { hostname, port } = new URL(address);
    const socket = connect(Number(port), hostname);
    socket.write('GET / HTTP/1.1\r\nHost: ');
    const endedBy = new Promise((resolve) => socket.once('close', resolve));
    socket.resume();
    await endedBy;
  });
});
