import { type CallName, contract, Push, type Reply, Request } from '../../core/contract/contract.ts';
import { type Outcome, refuse } from '../../core/contract/problem.ts';
import type { WorkingShow } from '../database/sheltered-show.ts';
import { type Context, type Handler, handlers, type Surroundings } from './handlers.ts';
import type { Log } from './log.ts';

/** One window (or stage page) that talks to the service. */
export type Connection = {
  /** Takes a frame of the window. False where it is none that can be answered: whoever sends such is no page of ours. */
  take(frame: string): boolean;
  /** The window has gone. */
  close(): void;
};

/** The largest frame a window may send: the largest rider in base64, with room for the names around it. */
export const largestFrameBytes = 34 * 1024 * 1024;

/**
 * Answers the calls of the contract, whatever carries their frames. Calls are begun in the order they come. Both
 * what comes in and what goes out is parsed; what is thrown becomes an `internal error` with the id of its log line.
 */
export class Service {
  readonly #show: WorkingShow;
  readonly #host: Context['host'];
  readonly #log: Log;
  readonly #surroundings: Surroundings;
  readonly #windows = new Set<(frame: string) => void>();
  #windowsSeen = 0;

  constructor(
    show: WorkingShow,
    host: Context['host'],
    log: Log,
    surroundings: Surroundings = {
      copies: null,
      chooseFolder: null,
      findDrives: async () => [],
      notice: null,
    },
  ) {
    this.#show = show;
    this.#host = host;
    this.#log = log;
    this.#surroundings = surroundings;
  }

  /** How many windows are connected now. */
  get windowCount(): number {
    return this.#windows.size;
  }

  /** How many windows have ever connected. */
  get windowsSeen(): number {
    return this.#windowsSeen;
  }

  /** Tells every window what nobody asked for. */
  tellAll(push: Push): void {
    this.#tell(push, null);
  }

  connect(send: (frame: string) => void): Connection {
    const gone = new AbortController();
    const context: Context = {
      ...this.#surroundings,
      show: this.#show,
      host: this.#host,
      tellCaller: (push) => {
        if (!gone.signal.aborted) send(JSON.stringify(Push.parse(push)));
      },
      tellOthers: (push) => this.#tell(push, send),
      gone: gone.signal,
    };
    this.#windows.add(send);
    this.#windowsSeen += 1;
    return {
      take: (frame) => {
        const request = Request.safeParse(parsedJson(frame));
        if (!request.success) return false;
        void this.#answer(context, request.data).then((reply) => {
          if (!gone.signal.aborted) send(JSON.stringify(reply));
        });
        return true;
      },
      close: () => {
        this.#windows.delete(send);
        gone.abort();
      },
    };
  }

  async #answer(context: Context, { id, call, input }: Request): Promise<Reply> {
    const outcome = await this.#run(context, call, input);
    return outcome.ok ? { id, ok: true, value: outcome.value } : { id, ok: false, problem: outcome.problem };
  }

  async #run(context: Context, call: string, input: unknown): Promise<Outcome<unknown>> {
    if (!isCall(call)) return wrongRequest('There is no call of that name.');
    const checked = contract[call].in.safeParse(input);
    if (!checked.success) {
      const issue = checked.error.issues[0];
      return wrongRequest(
        `"${call}" was given a value it cannot take (${issue?.path.join('.')}: ${issue?.message}).`,
      );
    }
    try {
      // One call's handler takes that call's input: true of every line of both tables, but not for a union of them.
      const handler = handlers[call] as unknown as Handler<CallName>;
      const outcome = await handler(context, checked.data as never);
      return outcome.ok ? { ok: true, value: contract[call].out.parse(outcome.value) } : outcome;
    } catch (error) {
      return this.#internalError(call, error);
    }
  }

  #internalError(call: CallName, error: unknown): Outcome<never> {
    const id = this.#log.trouble(call, error);
    const refused = refuse(
      'internal error',
      'Something went wrong inside the program.',
      `Try again; what was saved is still there. If it stays, report it with the number ${id}, which finds it in the log.`,
    );
    return { ok: false, problem: { ...refused.problem, id } };
  }

  #tell(push: Push, except: ((frame: string) => void) | null): void {
    const frame = JSON.stringify(Push.parse(push));
    for (const send of this.#windows) if (send !== except) send(frame);
  }
}

function isCall(call: string): call is CallName {
  return Object.hasOwn(contract, call);
}

function wrongRequest(what: string): Outcome<never> {
  return refuse('wrong request', what, 'Open the window again; if it stays, report it.');
}

function parsedJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}
