import type { Changed, Push, Standing } from '../../core/contract/contract.ts';
import type { Problem } from '../../core/contract/problem.ts';
import { applyChange } from '../../core/show/apply-change.ts';
import { type Change, changeLabel } from '../../core/show/change.ts';
import { emptyShow, type Rows, type Show, showFromRows } from '../../core/show/show.ts';
import type { Answer, Connection } from '../connection.ts';
import { words } from '../wording/words.ts';
import { changesNothing } from './changes-nothing.ts';

/** How the show in this window stands against the disk. */
export type Saving = 'saved' | 'saving' | 'not saved';

export type ShowState = {
  phase: 'opening' | 'open' | 'failed';
  /** What is on screen: the durable show and everything typed since. */
  show: Show;
  standing: Standing;
  file: string;
  saving: Saving;
  /** The last trouble worth a sentence, until it is dismissed. */
  problem: Problem | null;
};

type Step = { do: 'change'; change: Change } | { do: 'undo' } | { do: 'redo' };

/** Where unsent changes are kept over a reload of the page. */
export type UnsentShelf = { load(file: string): Change[]; save(file: string, changes: Change[]): void };

const nowhere: Standing = { revision: 0, undo: null, redo: null };
const retryMs = 2000;

/**
 * The show of this window. A change is on screen at once and then on its way to the disk; one that is refused is
 * taken back with a sentence; one whose answer was lost stays and is sent again, because nobody knows whether
 * it arrived and putting the same rows twice does no harm.
 */
export class ShowStore {
  readonly #connection: Connection;
  readonly #shelf: UnsentShelf;
  readonly #listeners = new Set<() => void>();
  /** The show as the service has it. */
  #durable: Show = emptyShow();
  #steps: Step[] = [];
  #sending = false;
  #reached = false;
  #state: ShowState = {
    phase: 'opening',
    show: this.#durable,
    standing: nowhere,
    file: '',
    saving: 'saved',
    problem: null,
  };

  constructor(connection: Connection, shelf: UnsentShelf) {
    this.#connection = connection;
    this.#shelf = shelf;
    connection.onPush((push) => this.#hear(push));
    connection.onReach((reached) => {
      this.#reached = reached;
      if (reached) void this.#open();
      else this.#set({ saving: this.#steps.length > 0 ? 'not saved' : this.#state.saving });
    });
  }

  readonly subscribe = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  readonly state = (): ShowState => this.#state;

  /** Shows a change at once and sends it, its label cut to what is kept. */
  readonly change = (made: Change): void => {
    if (made.put.length + made.remove.length === 0) return;
    const change = { ...made, label: changeLabel(made.label) };
    this.#steps.push({ do: 'change', change });
    this.#set({ show: applyChange(this.#state.show, change), problem: null });
    void this.#send();
  };

  readonly undo = (): void => {
    this.#steps.push({ do: 'undo' });
    void this.#send();
  };

  readonly redo = (): void => {
    this.#steps.push({ do: 'redo' });
    void this.#send();
  };

  /** Takes the durable change that another call of this window made: a restore, something brought in. */
  readonly take = (changed: Changed): void => this.#takeChanged(changed);

  readonly dismiss = (): void => this.#set({ problem: null });

  /** Says a sentence of the page's own, for example why a file was refused. */
  readonly tell = (problem: Problem): void => this.#set({ problem });

  async #open(): Promise<void> {
    const answer = await this.#connection.call('show.open', {});
    if (!answer.ok) {
      if (answer.lost) return;
      this.#set({ phase: this.#state.phase === 'open' ? 'open' : 'failed', problem: answer.problem });
      return;
    }
    const { show, standing, file, notice } = answer.value;
    this.#durable = showFromRows(show as unknown as Rows);
    if (this.#state.phase !== 'open') this.#steps.unshift(...this.#leftOver(file));
    this.#steps = this.#steps.filter(
      (step) => step.do !== 'change' || !changesNothing(this.#durable, step.change),
    );
    // Said once: a window that only comes back has said it already.
    const said = notice && this.#state.phase !== 'open' ? { problem: notice } : {};
    this.#set({ phase: 'open', standing, file, show: this.#withUnsent(), ...said });
    void this.#send();
  }

  #leftOver(file: string): Step[] {
    return this.#shelf.load(file).map((change) => ({ do: 'change', change }));
  }

  #withUnsent(): Show {
    return this.#steps.reduce(
      (show, step) => (step.do === 'change' ? applyChange(show, step.change) : show),
      this.#durable,
    );
  }

  async #send(): Promise<void> {
    if (this.#sending || this.#state.phase !== 'open') return this.#settle();
    this.#sending = true;
    this.#settle();
    for (let step = this.#steps[0]; step && this.#reached; step = this.#steps[0]) {
      const going =
        step.do === 'change' ? await this.#sendChange(step.change) : await this.#sendBack(step.do);
      if (!going) break;
    }
    this.#sending = false;
    this.#settle();
  }

  /** False where the sending must pause. */
  async #sendChange(change: Change): Promise<boolean> {
    const answer = await this.#connection.call('show.change', { change });
    if (answer.ok) {
      this.#steps.shift();
      const { standing } = answer.value;
      // With nothing else on its way both are the same show; sharing it keeps what was derived from it.
      if (this.#steps.length === 0) this.#durable = this.#state.show;
      else if (standing.revision > this.#state.standing.revision)
        this.#durable = applyChange(this.#durable, change);
      // Said in one breath with where the show stands, so that the window is drawn once.
      this.#set({ standing, saving: this.#saving(standing) });
      return true;
    }
    return this.#failed(answer, words.saving.notKept(change.label));
  }

  async #sendBack(direction: 'undo' | 'redo'): Promise<boolean> {
    const answer = await this.#connection.call(`show.${direction}`, {});
    if (!answer.ok) return this.#failed(answer, '');
    this.#steps.shift();
    this.#takeChanged(answer.value);
    return true;
  }

  #failed(answer: Answer<unknown> & { ok: false }, lead: string): boolean {
    if (answer.lost) return false;
    if (answer.problem.code === 'cannot write') {
      this.#set({ problem: answer.problem });
      setTimeout(() => void this.#send(), retryMs);
      return false;
    }
    this.#steps.shift();
    const { problem } = answer;
    this.#set({ show: this.#withUnsent(), problem: { ...problem, what: `${lead} ${problem.what}`.trim() } });
    return true;
  }

  #hear(push: Push): void {
    if (this.#state.phase !== 'open') return;
    if (push.push === 'changed') this.#takeChanged(push.changed);
    if (push.push === 'standing') {
      this.#set({ standing: push.standing });
      this.#settle();
    }
  }

  /** Takes a durable change that came from elsewhere: another window, a stage page, undo. */
  #takeChanged({ change, standing }: Changed): void {
    const { revision } = this.#state.standing;
    if (standing.revision <= revision) return;
    if (standing.revision > revision + 1) {
      void this.#open();
      return;
    }
    this.#durable = applyChange(this.#durable, change);
    this.#set({ show: this.#withUnsent(), standing, saving: this.#saving(standing) });
  }

  #settle(): void {
    this.#set({ saving: this.#saving(this.#state.standing) });
    if (this.#state.phase !== 'open') return;
    this.#shelf.save(
      this.#state.file,
      this.#steps.flatMap((step) => (step.do === 'change' ? [step.change] : [])),
    );
  }

  #saving(standing: Standing): Saving {
    if (this.#steps.length > 0) return this.#sending && this.#reached ? 'saving' : 'not saved';
    return standing.unsaved ? 'not saved' : 'saved';
  }

  #set(part: Partial<ShowState>): void {
    const keys = Object.keys(part) as (keyof ShowState)[];
    if (keys.every((key) => this.#state[key] === part[key])) return;
    this.#state = { ...this.#state, ...part };
    for (const listener of this.#listeners) listener();
  }
}
