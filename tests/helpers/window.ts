import { type CallName, type Push, Push as PushSchema, Reply } from '../../core/contract/contract.ts';
import type { Connection, Service } from '../../electron/service/service.ts';

/** What carries a test window's frames to the program and back. */
export type Carrier = { send(frame: string): void; onFrame(take: (frame: string) => void): void };

/** A window as a test sees it: it calls, it hears pushes, and it can also send what no window of ours would. */
export class TestWindow {
  readonly pushes: Push[] = [];
  readonly #carrier: Carrier;
  readonly #waiting = new Map<number, (reply: Reply) => void>();
  #nextId = 1_000_000;

  constructor(carrier: Carrier) {
    this.#carrier = carrier;
    carrier.onFrame((frame) => this.#take(JSON.parse(frame)));
  }

  /** Sends a call, whatever it is named and given, and waits for its reply. */
  call(call: CallName | (string & {}), input: unknown): Promise<Reply> {
    const id = this.#nextId++;
    return new Promise((resolve) => {
      this.#waiting.set(id, resolve);
      this.sendRaw(JSON.stringify({ id, call, input }));
    });
  }

  sendRaw(frame: string): void {
    this.#carrier.send(frame);
  }

  #take(frame: unknown): void {
    const push = PushSchema.safeParse(frame);
    if (push.success) {
      this.pushes.push(push.data);
      return;
    }
    const reply = Reply.parse(frame);
    this.#waiting.get(reply.id)?.(reply);
    this.#waiting.delete(reply.id);
  }
}

/** A window of a service with nothing between the two. */
export function windowOf(service: Service): { window: TestWindow; connection: Connection } {
  let take: (frame: string) => void = () => undefined;
  const connection = service.connect((frame) => take(frame));
  const window = new TestWindow({
    send: (frame) => void connection.take(frame),
    onFrame: (it) => {
      take = it;
    },
  });
  return { window, connection };
}
