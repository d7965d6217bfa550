import type { CallInput, CallName, CallOutput, Push as PushFrame } from '../core/contract/contract.ts';
import { contract, Push, Reply } from '../core/contract/contract.ts';
import type { Problem } from '../core/contract/problem.ts';
import { words } from './wording/words.ts';

/** What a call comes to. `lost`: nobody knows whether the service did it, because the answer never came. */
export type Answer<T> = { ok: true; value: T } | { ok: false; problem: Problem; lost: boolean };

/** One way to carry frames to the service and back: Electron's bridge or a WebSocket. */
export type Wire = {
  /** Puts a frame on the way; false where the service cannot be reached now. */
  send(frame: { id: number; call: string; input: unknown }): boolean;
  /** Starts the wire; it may be lost and come back any number of times. */
  start(heard: { frame(frame: unknown): void; reached(): void; lost(): void }): void;
};

/**
 * The contract over a wire. What goes out and what comes in is parsed by the contract's schemas, so that neither
 * a bug here nor one in the shell gets any further than this file.
 */
export class Connection {
  readonly #wire: Wire;
  readonly #waiting = new Map<number, (answer: Answer<unknown>) => void>();
  readonly #pushListeners = new Set<(push: PushFrame) => void>();
  readonly #reachListeners = new Set<(reached: boolean) => void>();
  #nextId = 1;

  constructor(wire: Wire) {
    this.#wire = wire;
  }

  start(): void {
    this.#wire.start({
      frame: (frame) => this.#take(frame),
      reached: () => this.#tell(true),
      lost: () => {
        this.#failWaiting();
        this.#tell(false);
      },
    });
  }

  /** Calls the service. Never rejects: trouble is an answer. */
  async call<C extends CallName>(call: C, input: CallInput<C>): Promise<Answer<CallOutput<C>>> {
    const checked = contract[call].in.safeParse(input);
    if (!checked.success) return refusal('wrong request', firstIssue(checked.error.issues));
    const answer = await this.#ask(call, checked.data);
    if (!answer.ok) return answer;
    const value = contract[call].out.safeParse(answer.value);
    if (!value.success) return refusal('internal error', firstIssue(value.error.issues));
    return { ok: true, value: value.data as CallOutput<C> };
  }

  /** Hears what the service tells without being asked. Returns what ends the hearing. */
  onPush(listener: (push: PushFrame) => void): () => void {
    this.#pushListeners.add(listener);
    return () => this.#pushListeners.delete(listener);
  }

  onReach(listener: (reached: boolean) => void): () => void {
    this.#reachListeners.add(listener);
    return () => this.#reachListeners.delete(listener);
  }

  #ask(call: string, input: unknown): Promise<Answer<unknown>> {
    const id = this.#nextId++;
    return new Promise((resolve) => {
      this.#waiting.set(id, resolve);
      if (this.#wire.send({ id, call, input })) return;
      this.#waiting.delete(id);
      resolve(lostAnswer());
    });
  }

  #take(frame: unknown): void {
    const push = Push.safeParse(frame);
    if (push.success) {
      for (const listener of this.#pushListeners) listener(push.data);
      return;
    }
    const reply = Reply.safeParse(frame);
    if (!reply.success) return;
    const resolve = this.#waiting.get(reply.data.id);
    this.#waiting.delete(reply.data.id);
    resolve?.(
      reply.data.ok
        ? { ok: true, value: reply.data.value }
        : { ok: false, problem: reply.data.problem, lost: false },
    );
  }

  #tell(reached: boolean): void {
    for (const listener of this.#reachListeners) listener(reached);
  }

  #failWaiting(): void {
    const waiting = [...this.#waiting.values()];
    this.#waiting.clear();
    for (const resolve of waiting) resolve(lostAnswer());
  }
}

const lostAnswer = (): Answer<never> => ({
  ok: false,
  lost: true,
  problem: { code: 'stopped', what: words.connection.lost, todo: words.connection.lostTodo },
});

function refusal(code: 'wrong request' | 'internal error', detail: string): Answer<never> {
  const text = code === 'wrong request' ? words.connection.wrongValue : words.connection.wrongAnswer;
  return { ok: false, lost: false, problem: { code, what: text(detail), todo: words.connection.wrongTodo } };
}

function firstIssue(issues: readonly { path: PropertyKey[]; message: string }[]): string {
  const issue = issues[0];
  if (!issue) return '';
  const field = issue.path.filter((part) => typeof part === 'string').at(-1);
  return field ? `${String(field)}: ${issue.message}` : issue.message;
}
