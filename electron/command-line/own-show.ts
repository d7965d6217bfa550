import { resolve } from 'node:path';
import {
  type CallInput,
  type CallName,
  type CallOutput,
  contract,
  Reply,
} from '../../core/contract/contract.ts';
import type { Outcome } from '../../core/contract/problem.ts';
import type { Service } from '../service/service.ts';
import { dataFolder } from '../starting/data-folder.ts';
import { openService } from '../starting/open-service.ts';

/** The show of this machine as a command works on it: by the calls of a window, and told what a window is told. */
export type OwnShow = {
  call<C extends CallName>(call: C, input: CallInput<C>): Promise<Outcome<CallOutput<C>>>;
};

const root = resolve(import.meta.dirname, '..', '..');

/**
 * Opens it, does the work and closes it; what happened at the opening is told beside what is printed. Refused as a
 * window would be, for example where a window has it open.
 */
export async function withOwnShow<T>(work: (show: OwnShow) => Promise<Outcome<T>>): Promise<Outcome<T>> {
  const opened = openService(root, dataFolder(), 'browser', { onSchedule: false });
  if (!opened.ok) return opened;
  const { service, said, close } = opened.value;
  if (said) console.error(said);
  try {
    return await work({ call: callsTo(service) });
  } finally {
    close();
  }
}

function callsTo(service: Service): OwnShow['call'] {
  const waiting = new Map<number, (reply: Reply) => void>();
  const connection = service.connect((frame) => {
    const reply = Reply.safeParse(JSON.parse(frame));
    if (reply.success) waiting.get(reply.data.id)?.(reply.data);
  });
  let id = 0;
  return async (name, input) => {
    const reply = await new Promise<Reply>((answered) => {
      id += 1;
      waiting.set(id, answered);
      connection.take(JSON.stringify({ id, call: name, input }));
    });
    return reply.ok ? { ok: true, value: contract[name].out.parse(reply.value) as never } : reply;
  };
}
