import { startSmallHost } from '../helpers/local-host.ts';
import { openSocket } from '../helpers/socket.ts';
import { describeTransport } from './transport-suite.ts';

describeTransport('a WebSocket', async () => {
  const { address } = await startSmallHost();
  const [one, other] = await Promise.all([openSocket(address), openSocket(address)]);
  return { one: one.window, other: other.window, host: 'browser' };
});
