import { sheetKey } from '../../core/sheets/paper-request.ts';
import type { Progress } from '../paper/make-files.ts';
import { makePaper } from '../paper/make-paper.ts';
import { timeWords } from '../paper/time-words.ts';
import type { Context, Handler } from './handlers.ts';

/** What is being made for each window now. */
const making = new WeakMap<Context, Set<AbortController>>();

export const makeSheets: Handler<'paper.make'> = async (context, { request, keep }) => {
  const stop = new AbortController();
  const all = making.get(context) ?? new Set();
  making.set(context, all.add(stop));
  try {
    const now = new Date();
    const outcome = await makePaper(
      {
        show: context.show.read(),
        request,
        lastEditions: context.show.lastPrints(request.jobs.map(sheetKey)),
        now,
        madeAt: timeWords(now),
      },
      progressTo(context),
      AbortSignal.any([stop.signal, context.gone]),
    );
    if (!outcome.ok) return outcome;
    const { files, pageCount, editions, missing } = outcome.value;
    const kept = keep ? context.show.keepPrints(editions) : null;
    if (kept && !kept.ok) return kept;
    return {
      ok: true,
      value: {
        files: files.map(({ name, bytes }) => ({ name, base64: Buffer.from(bytes).toString('base64') })),
        pageCount,
        versions: editions.map(({ key, edition, isNew }) => ({ key, number: edition.number, isNew })),
        missing,
      },
    };
  } finally {
    all.delete(stop);
  }
};

export const stopSheets: Handler<'paper.stop'> = (context) => {
  for (const stop of making.get(context) ?? []) stop.abort();
  return { ok: true, value: {} };
};

/** A window is told a hundred times at most, however many pages there are. */
function progressTo(context: Context): Progress {
  let told = -1;
  return (done, of, what) => {
    const hundredth = Math.floor((100 * done) / Math.max(1, of));
    if (hundredth === told) return;
    told = hundredth;
    context.tellCaller({ push: 'paper progress', share: Math.min(1, hundredth / 100), what });
  };
}
