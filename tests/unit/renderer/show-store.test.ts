import { describe, expect, test } from 'vitest';
import type { Push } from '../../../core/contract/contract.ts';
import { applyChange } from '../../../core/show/apply-change.ts';
import { type Change, put } from '../../../core/show/change.ts';
import { documentFromShow, type Show } from '../../../core/show/show.ts';
import { Connection, type Wire } from '../../../renderer/connection.ts';
import { ShowStore, type UnsentShelf } from '../../../renderer/state/show-store.ts';
import { smallFestival } from '../../fixtures/small-festival.ts';

/** A service in memory behind a wire that can be cut, that can refuse, and that answers when it is told to. */
class SmallService {
  show: Show = smallFestival();
  revision = 0;
  refuse: { code: string; what: string; todo: string } | null = null;
  labels: string[] = [];
  /** Does the work, but cuts the wire before the answer. */
  losesNextAnswer = false;
  isReached = true;
  #heard: Parameters<Wire['start']>[0] | null = null;

  readonly wire: Wire = {
    start: (heard) => {
      this.#heard = heard;
      heard.reached();
    },
    send: (frame) => {
      if (!this.isReached) return false;
      queueMicrotask(() => this.#answer(frame));
      return true;
    },
  };

  cut(): void {
    this.isReached = false;
    this.#heard?.lost();
  }

  join(): void {
    this.isReached = true;
    this.#heard?.reached();
  }

  push(change: Change): void {
    this.show = applyChange(this.show, change);
    this.revision++;
    const push: Push = { push: 'changed', changed: { change, standing: this.#standing() } };
    this.#heard?.frame(push);
  }

  #standing() {
    return { revision: this.revision, undo: null, redo: null };
  }

  #answer({ id, call, input }: { id: number; call: string; input: unknown }): void {
    const done = (value: unknown) => this.#heard?.frame({ id, ok: true, value });
    if (call === 'show.open') {
      done({ show: documentFromShow(this.show), standing: this.#standing(), file: 'a', host: 'browser' });
    } else if (this.refuse) {
      this.#heard?.frame({ id, ok: false, problem: this.refuse });
    } else {
      const { change } = input as { change: Change };
      this.labels.push(change.label);
      this.show = applyChange(this.show, change);
      this.revision++;
      if (!this.losesNextAnswer) done({ standing: this.#standing() });
      else {
        this.losesNextAnswer = false;
        this.cut();
      }
    }
  }
}

function openStore(service = new SmallService(), kept: Change[] = []) {
  const shelf: UnsentShelf & { changes: Change[] } = {
    changes: kept,
    load: () => shelf.changes,
    save: (_file, changes) => {
      shelf.changes = changes;
    },
  };
  const connection = new Connection(service.wire);
  const store = new ShowStore(connection, shelf);
  connection.start();
  return { service, store, shelf };
}

const rename = (name: string): Change => {
  const act = smallFestival().acts.get('tarn');
  if (!act) throw new Error('the act is in the fixture');
  return { label: `Rename to ${name}`, put: [put('acts', { ...act, name })], remove: [] };
};

const settled = () => new Promise((resolve) => setTimeout(resolve, 5));
const nameOf = (show: Show) => show.acts.get('tarn')?.name;

describe('a change', () => {
  test('is on screen before the disk has it, and saved when the service says so', async () => {
    const { store, service } = openStore();
    await settled();
    store.change(rename('New name'));
    expect(nameOf(store.state().show)).toBe('New name');
    expect(store.state().saving).toBe('saving');
    await settled();
    expect(store.state().saving).toBe('saved');
    expect(nameOf(service.show)).toBe('New name');
  });

  test('of a row with a very long name says as much of it as a change may say', async () => {
    const { store, service } = openStore();
    await settled();
    store.change({ ...rename('New name'), label: `Rename to ${'very '.repeat(60)}long` });
    await settled();
    expect(nameOf(service.show)).toBe('New name');
    expect(service.labels.at(-1)).toHaveLength(200);
  });

  test('that is refused is taken back with the sentence that says why', async () => {
    const { store, service } = openStore();
    await settled();
    service.refuse = { code: 'broken reference', what: 'The act is gone.', todo: 'Open another one.' };
    store.change(rename('New name'));
    await settled();
    expect(nameOf(store.state().show)).toBe('Tarn & the Ferrymen');
    expect(store.state().problem?.what).toMatch(/Rename to New name.*not kept.*The act is gone/);
    expect(store.state().saving).toBe('saved');
  });

  test('that the disk does not take stays on screen as not saved and is sent again', async () => {
    const { store, service, shelf } = openStore();
    await settled();
    service.refuse = { code: 'cannot write', what: 'The disk is full.', todo: 'Make room.' };
    store.change(rename('New name'));
    await settled();
    expect(nameOf(store.state().show)).toBe('New name');
    expect(store.state().saving).toBe('not saved');
    expect(shelf.changes).toHaveLength(1);
  });

  test('whose schema is broken is refused before it leaves the page', async () => {
    const { store, service } = openStore();
    await settled();
    const bad = rename('x');
    store.change({ ...bad, put: [{ table: 'acts', row: { ...bad.put[0]?.row, name: '' } } as never] });
    await settled();
    expect(nameOf(store.state().show)).toBe('Tarn & the Ferrymen');
    expect(store.state().problem?.code).toBe('wrong request');
    expect(service.revision).toBe(0);
  });
});

describe('while the program does not answer', () => {
  test('what is typed stays on screen, says that it is not saved, and is sent when it answers again', async () => {
    const { store, service } = openStore();
    await settled();
    service.cut();
    store.change(rename('Typed in the dark'));
    await settled();
    expect(nameOf(store.state().show)).toBe('Typed in the dark');
    expect(store.state().saving).toBe('not saved');
    service.join();
    await settled();
    expect(nameOf(service.show)).toBe('Typed in the dark');
    expect(store.state().saving).toBe('saved');
  });

  test('a change that arrived although its answer was lost is not sent twice', async () => {
    const { store, service } = openStore();
    await settled();
    service.losesNextAnswer = true;
    store.change(rename('Arrived'));
    await settled();
    service.join();
    await settled();
    expect(service.revision).toBe(1);
    expect(store.state().saving).toBe('saved');
  });

  test('unsent changes survive a reload of the page', async () => {
    const { store, service } = openStore(new SmallService(), [rename('From before the reload')]);
    await settled();
    expect(nameOf(store.state().show)).toBe('From before the reload');
    expect(nameOf(service.show)).toBe('From before the reload');
  });
});

describe('changes from another window', () => {
  test('are shown, and what is typed here stays on top of them', async () => {
    const { store, service } = openStore();
    await settled();
    service.refuse = { code: 'cannot write', what: 'The disk is full.', todo: 'Make room.' };
    store.change(rename('Mine'));
    await settled();
    const other = smallFestival().acts.get('pale');
    if (!other) throw new Error('the act is in the fixture');
    service.push({ label: 'x', put: [put('acts', { ...other, name: 'Theirs' })], remove: [] });
    await settled();
    expect(nameOf(store.state().show)).toBe('Mine');
    expect(store.state().show.acts.get('pale')?.name).toBe('Theirs');
  });

  test('a gap in their numbers has the whole show read again', async () => {
    const { store, service } = openStore();
    await settled();
    service.revision = 4;
    service.push(rename('After a gap'));
    await settled();
    expect(nameOf(store.state().show)).toBe('After a gap');
    expect(store.state().standing.revision).toBe(5);
  });
});
