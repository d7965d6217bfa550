import type { Outcome, Problem } from '../../core/contract/problem.ts';
import { showInMemory } from './open-show.ts';
import type { ShowDatabase } from './show-database.ts';

/** What may be done with a show, whether its file can be written or not. */
export type WorkingShow = Omit<Pick<ShowDatabase, keyof ShowDatabase>, 'bytes' | 'damage' | 'wrongRow'>;

/** Keeps a show safe while its own file cannot be written: where, or null where it cannot be kept anywhere. */
export type Refuge = { keep(show: ShowDatabase): Promise<string | null>; leave(): void };

type Settings = {
  refuge: Refuge;
  /** Tells the windows that the show went to memory, or came back to its file. */
  tell?: () => void;
  /** Opens the file that could not be opened at the start. */
  reopen?: () => Outcome<ShowDatabase>;
  backEveryMs?: number;
};

type Step = (show: ShowDatabase) => Outcome<unknown>;

/**
 * A show whose work goes on when its file cannot be written (a full disk, a folder that was taken away): in memory,
 * with every answer saying so, kept elsewhere, and written to the file, step by step in its order, as soon as that
 * can be done again. Until then the file holds exactly what was said to be saved before.
 */
export class ShelteredShow implements WorkingShow {
  readonly path: string;
  readonly #settings: Settings;
  #file: ShowDatabase | null;
  #memory: ShowDatabase | null = null;
  #trouble: Problem | null = null;
  #waiting: Step[] = [];
  #keptAt: string | null = null;
  #keeping: Promise<void> = Promise.resolve();
  #isKeepWaiting = false;
  #timer: NodeJS.Timeout | null = null;

  private constructor(path: string, file: ShowDatabase | null, settings: Settings) {
    this.path = path;
    this.#file = file;
    this.#settings = settings;
  }

  static onFile(file: ShowDatabase, settings: Settings): ShelteredShow {
    return new ShelteredShow(file.path, file, settings);
  }

  /** A show that could only be read, or not even that; `trouble` says why. */
  static inMemory(memory: ShowDatabase, trouble: Problem, settings: Settings): ShelteredShow {
    const show = new ShelteredShow(memory.path, null, settings);
    show.#enter(memory, trouble);
    return show;
  }

  read: WorkingShow['read'] = () => this.#current().read();
  lastPrints: WorkingShow['lastPrints'] = (keys) => this.#current().lastPrints(keys);
  states: WorkingShow['states'] = (of) => this.#current().states(of);
  state: WorkingShow['state'] = (id) => this.#current().state(id);
  allStates: WorkingShow['allStates'] = () => this.#current().allStates();
  findInArchive: WorkingShow['findInArchive'] = (text, most) => this.#current().findInArchive(text, most);
  archivedCount: WorkingShow['archivedCount'] = () => this.#current().archivedCount();
  archivedAct: WorkingShow['archivedAct'] = (actId) => this.#current().archivedAct(actId);
  removedFromArchive: WorkingShow['removedFromArchive'] = () => this.#current().removedFromArchive();
  allArchived: WorkingShow['allArchived'] = () => this.#current().allArchived();
  writings: WorkingShow['writings'] = (after, upTo) => this.#current().writings(after, upTo);
  copyTo: WorkingShow['copyTo'] = (path) => this.#current().copyTo(path);

  standing: WorkingShow['standing'] = () => ({ ...this.#current().standing(), ...this.#unsaved() });
  change: WorkingShow['change'] = (change) => this.#saying(this.#do((show) => show.change(change)));
  undo: WorkingShow['undo'] = () => this.#sayingChanged(this.#do((show) => show.undo()));
  redo: WorkingShow['redo'] = () => this.#sayingChanged(this.#do((show) => show.redo()));
  keepPrints: WorkingShow['keepPrints'] = (printed) => this.#do((show) => show.keepPrints(printed));
  keepState: WorkingShow['keepState'] = (state) => this.#do((show) => show.keepState(state));
  adoptStates: WorkingShow['adoptStates'] = (states) => this.#do((show) => show.adoptStates(states));
  keepInArchive: WorkingShow['keepInArchive'] = (actId) => this.#do((show) => show.keepInArchive(actId));
  removeFromArchive: WorkingShow['removeFromArchive'] = (actId) =>
    this.#do((show) => show.removeFromArchive(actId));
  putBackIntoArchive: WorkingShow['putBackIntoArchive'] = (actId) =>
    this.#do((show) => show.putBackIntoArchive(actId));
  adoptArchived: WorkingShow['adoptArchived'] = (acts) => this.#do((show) => show.adoptArchived(acts));

  /** Whether the show is in memory only. */
  get isSheltered(): boolean {
    return this.#memory !== null;
  }

  /** Tries the file once more now. */
  tryFile(): void {
    this.#file ??= this.#reopened();
    if (!this.#memory || !this.#file) return;
    for (let step = this.#waiting[0]; step; step = this.#waiting[0]) {
      const outcome = step(this.#file);
      if (!outcome.ok && outcome.problem.code === 'cannot write') return;
      this.#waiting.shift();
    }
    this.#leave();
  }

  /** Waits until what is in memory is also kept elsewhere, as far as it can be. */
  async kept(): Promise<void> {
    await this.#keeping;
  }

  close(): void {
    this.tryFile();
    if (this.#timer) clearInterval(this.#timer);
    this.#memory?.close();
    this.#file?.close();
  }

  #current(): ShowDatabase {
    const current = this.#memory ?? this.#file;
    if (!current) throw new Error('A show is neither in a file nor in memory.');
    return current;
  }

  #do<T>(step: (show: ShowDatabase) => Outcome<T>): Outcome<T> {
    if (this.#memory) return this.#doInMemory(step, this.#memory);
    const outcome = step(this.#current());
    if (outcome.ok || outcome.problem.code !== 'cannot write' || !this.#file) return outcome;
    const memory = inMemory(this.#file);
    if (!memory) return outcome;
    this.#enter(memory, outcome.problem);
    return this.#doInMemory(step, memory);
  }

  #doInMemory<T>(step: (show: ShowDatabase) => Outcome<T>, memory: ShowDatabase): Outcome<T> {
    const outcome = step(memory);
    if (outcome.ok) {
      this.#waiting.push(step);
      this.#keepElsewhere(memory);
    }
    return outcome;
  }

  #enter(memory: ShowDatabase, trouble: Problem): void {
    this.#memory = memory;
    this.#trouble = trouble;
    this.#timer = setInterval(() => this.tryFile(), this.#settings.backEveryMs ?? 5_000);
    this.#timer.unref();
    this.#keepElsewhere(memory);
  }

  #leave(): void {
    if (this.#timer) clearInterval(this.#timer);
    this.#memory?.close();
    this.#memory = null;
    this.#trouble = null;
    this.#keptAt = null;
    this.#settings.refuge.leave();
    this.#settings.tell?.();
  }

  /** One that has not begun yet will hold this step too: fast hands do not queue up copies. */
  #keepElsewhere(memory: ShowDatabase): void {
    if (this.#isKeepWaiting) return;
    this.#isKeepWaiting = true;
    this.#keeping = this.#keeping.then(async () => {
      this.#isKeepWaiting = false;
      if (this.#memory !== memory) return;
      const keptAt = await this.#settings.refuge.keep(memory).catch(() => null);
      if (keptAt === this.#keptAt || this.#memory !== memory) return;
      this.#keptAt = keptAt;
      this.#settings.tell?.();
    });
  }

  #reopened(): ShowDatabase | null {
    const opened = this.#settings.reopen?.();
    return opened?.ok ? opened.value : null;
  }

  #saying(outcome: ReturnType<WorkingShow['change']>): ReturnType<WorkingShow['change']> {
    return outcome.ok ? { ok: true, value: { ...outcome.value, ...this.#unsaved() } } : outcome;
  }

  #sayingChanged(outcome: ReturnType<WorkingShow['undo']>): ReturnType<WorkingShow['undo']> {
    if (!outcome.ok) return outcome;
    return {
      ok: true,
      value: { ...outcome.value, standing: { ...outcome.value.standing, ...this.#unsaved() } },
    };
  }

  #unsaved(): { unsaved?: { what: string; todo: string } } {
    if (!this.#trouble) return {};
    const elsewhere =
      this.#keptAt === null
        ? 'It is in memory only: do not close the program and do not switch this machine off.'
        : `It is in memory, and kept in “${this.#keptAt}”.`;
    return {
      unsaved: {
        what: `Your work is not in its file. ${this.#trouble.what} ${elsewhere}`,
        todo: `${this.#trouble.todo} The program tries again by itself and says when all is saved.`,
      },
    };
  }
}

function inMemory(file: ShowDatabase): ShowDatabase | null {
  try {
    return showInMemory(file.path, file.bytes());
  } catch {
    return null;
  }
}
