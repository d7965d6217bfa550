import type { Mix, Source } from '../show/act.ts';
import { placeOfSource } from '../show/place-of-source.ts';
import type { Id } from '../show/rig.ts';
import { socketName } from '../show/socket-name.ts';
import { placeOf, type StagePlace } from '../show/stage-place.ts';
import type { ActPatch } from './act-patch.ts';
import { type DevicePlace, devicePlaces } from './device-places.ts';
import { isMoved, middleOf } from './moved.ts';
import type { Task, TaskSubject } from './task.ts';
import { type TaskKind, taskKinds } from './task-kinds.ts';

/**
 * What is to be done between two acts, with what has to come before what: outputs muted and 48 V off before a
 * line is touched; the old line out before the new one goes in; stand and plug before the line check; the pack or
 * wedge and the act's own plan before the monitor check; everything checked before outputs open. Lines that were
 * patched while the act before played, and lines that stay, cost nothing here but their check.
 */
export function tasksBetween(from: ActPatch, to: ActPatch): Task[] {
  const list = new TaskList(from, to);
  list.addDeskStart();
  list.addRisers();
  list.addStrikes();
  list.addLines();
  list.addDevices();
  list.addChecks();
  return list.tasks;
}

class TaskList {
  readonly tasks: Task[] = [];
  readonly #from: ActPatch;
  readonly #to: ActPatch;
  /** Tasks that a source's line check waits for. */
  readonly #beforeCheck = new Map<Id, number[]>();
  readonly #deviceReady = new Map<Id, number[]>();
  readonly #rolledOff = new Map<string, number>();
  readonly #rolledOn = new Map<string, number>();
  #mute = -1;
  #phantomOff = -1;
  #recall = -1;
  readonly #oldBySocket: Map<Id, Source>;
  readonly #stays: ReadonlySet<Id>;

  constructor(from: ActPatch, to: ActPatch) {
    this.#from = from;
    this.#to = to;
    this.#oldBySocket = new Map(
      from.plan.patches.flatMap(({ sourceId, socketId }) => {
        const source = from.sheet.sources.find((it) => it.id === sourceId);
        return socketId !== null && source ? [[socketId, source] as const] : [];
      }),
    );
    this.#stays = new Set(
      to.plan.patches.flatMap(({ sourceId, socketId }) =>
        socketId !== null && to.entryOf(sourceId) === 'kept' ? [socketId] : [],
      ),
    );
  }

  addDeskStart(): void {
    this.#mute = this.#add('mute', 'Mute every output that goes to a wedge, a fill or a pack.', [], atDesk);
    const off = this.#from.plan.patches.flatMap(({ sourceId, socketId, phantomOn }) => {
      const touched = socketId !== null && this.#isReplaced(socketId);
      return phantomOn && touched ? [socketName(this.#from.sheet, socketId) ?? sourceId] : [];
    });
    if (off.length > 0)
      this.#phantomOff = this.#add('phantom off', `48 V off on ${off.join(', ')}.`, [this.#mute], atDesk);
    // 48 V goes off first of all and drains meanwhile; a check of another line may not push it back.
    this.#recall = this.#add(
      'recall',
      `Recall ${this.#to.sheet.act.name}, outputs still muted.`,
      [this.#untouched()],
      atDesk,
    );
  }

  addRisers(): void {
    const names = (side: ActPatch) => [
      ...new Set(side.sheet.sources.map((it) => it.riser).filter((it) => it !== '')),
    ];
    const shared = new Set(
      this.#to.sheet.sources.filter((it) => this.#to.entryOf(it.id) === 'kept').map((it) => it.riser),
    );
    for (const name of names(this.#from)) {
      if (shared.has(name)) continue;
      const members = this.#from.sheet.sources.filter((it) => it.riser === name);
      const pulled = members.flatMap((source) => this.#unplugOf(source));
      const task = this.#add(
        'roll off',
        `Roll off ${name} of ${this.#from.sheet.act.name}.`,
        [...pulled, this.#untouched()],
        {
          placeName: name,
          place: middleOf(members.map((it) => placeOfSource(this.#from.sheet, it))),
        },
      );
      this.#rolledOff.set(name, task);
    }
    for (const name of names(this.#to)) {
      if (shared.has(name)) continue;
      const members = this.#to.sheet.sources.filter((it) => it.riser === name);
      const task = this.#add(
        'roll on',
        `Roll on ${name} of ${this.#to.sheet.act.name}.`,
        [...this.#rolledOff.values(), this.#mute],
        {
          placeName: name,
          place: middleOf(members.map((it) => placeOfSource(this.#to.sheet, it))),
        },
      );
      this.#rolledOn.set(name, task);
    }
  }

  /** Stands of the act before that nobody uses again; what is on a riser goes with it. */
  addStrikes(): void {
    for (const { sourceId, socketId } of this.#from.plan.patches) {
      const source = this.#from.sheet.sources.find((it) => it.id === sourceId);
      if (!source || source.stand === '' || this.#rolledOff.has(source.riser)) continue;
      if (socketId !== null && this.#stays.has(socketId)) continue;
      this.#add(
        'strike',
        `Strike ${source.name}: ${source.stand}.`,
        [...this.#unplugOf(source), this.#untouched()],
        {
          sourceId,
          ...this.#at(this.#from, source),
        },
      );
    }
  }

  addLines(): void {
    for (const patch of this.#to.plan.patches) {
      const source = this.#to.sheet.sources.find((it) => it.id === patch.sourceId);
      if (!source || patch.socketId === null) continue;
      const entry = this.#to.entryOf(source.id);
      if (entry === 'kept') this.#addKept(source, patch.socketId);
      else if (entry === 'hot') this.#addPlugged(source, patch.socketId);
      else if (this.#rolledOn.has(source.riser)) this.#waitFor(source.id, this.#rolledOn.get(source.riser));
    }
    this.#addPhantomOn('cold');
    this.#addPhantomOn('hot');
  }

  /** 48 V for what was plugged ahead need not wait for what is still to be plugged. What was checked ahead has it. */
  #addPhantomOn(entry: 'hot' | 'cold'): void {
    if (entry === 'cold' && this.#to.sheet.act.lineCheckAhead) return;
    const on = this.#to.plan.patches.filter(
      ({ sourceId, socketId, phantomOn }) =>
        phantomOn && socketId !== null && this.#to.entryOf(sourceId) === entry,
    );
    if (on.length === 0) return;
    const names = on.map(({ socketId }) => socketName(this.#to.sheet, socketId) ?? '');
    const plugged = on.flatMap(({ sourceId }) => this.#beforeCheck.get(sourceId) ?? []);
    const task = this.#add(
      'phantom on',
      `48 V on for ${names.join(', ')}.`,
      [...plugged, this.#recall],
      atDesk,
    );
    for (const { sourceId } of on) this.#waitFor(sourceId, task);
  }

  addDevices(): void {
    const before = devicePlaces(this.#from);
    const after = devicePlaces(this.#to);
    for (const [deviceId, was] of before) this.#takeBack(was, after.get(deviceId));
    for (const [deviceId, is] of after) this.#bring(is, before.get(deviceId));
  }

  /** A pack always comes back first, to be wiped and set; a wedge that is used again is only moved. */
  #takeBack(was: DevicePlace, becomes: DevicePlace | undefined): void {
    if (becomes && !was.isPack) return;
    const task = was.isPack
      ? this.#add('take back pack', `Take back ${was.name} from ${was.mix.name}.`, [this.#mute], was.about)
      : this.#add('clear wedge', `Clear ${was.name} of ${was.mix.name}.`, [this.#mute], was.about);
    if (becomes) becomes.waitsFor = task;
  }

  #bring(is: DevicePlace, was: DevicePlace | undefined): void {
    if (was && !is.isPack && !isMoved(was.place, is.place)) return;
    const task = is.isPack
      ? this.#add(
          'hand out pack',
          `Hand out ${is.name} to ${is.mix.name}.`,
          [this.#mute, is.waitsFor ?? -1],
          is.about,
        )
      : this.#add(
          'set wedge',
          `Set ${is.name} for ${is.mix.name}.`,
          [this.#mute, ...this.#rolledOff.values()],
          is.about,
        );
    this.#deviceReady.set(is.mix.id, [...(this.#deviceReady.get(is.mix.id) ?? []), task]);
  }

  addChecks(): void {
    const checkOf = new Map<Id, number>();
    const done = new Set<Id>();
    for (const source of this.#to.sheet.sources) {
      const patch = this.#to.plan.patches.find((it) => it.sourceId === source.id);
      if (!patch?.socketId || done.has(source.id)) continue;
      const entry = this.#to.entryOf(source.id);
      const isAhead =
        this.#to.sheet.act.lineCheckAhead && entry !== 'hot' && !this.#rolledOn.has(source.riser);
      if (isAhead) continue;
      const kind: TaskKind =
        entry === 'kept' && !this.#beforeCheck.has(source.id) ? 'quick check' : 'line check';
      const socket = socketName(this.#to.sheet, patch.socketId) ?? '';
      const task = this.#add(
        kind,
        `Check ${source.name} on ${socket}.`,
        [this.#recall, ...(this.#beforeCheck.get(source.id) ?? [])],
        {
          sourceId: source.id,
          socketId: patch.socketId,
          ...this.#at(this.#to, source),
        },
      );
      checkOf.set(source.id, task);
    }
    const mixChecks = this.#to.sheet.mixes
      .filter((mix) => mix.mixedAt === 'house desk')
      .map((mix) =>
        this.#add(
          'monitor check',
          `Ask ${this.#listenersOf(mix)} what they need first in ${mix.name}.`,
          [this.#recall, ...(this.#deviceReady.get(mix.id) ?? []), ...this.#ownChecks(mix, checkOf)],
          { mixId: mix.id, placeName: mix.place || mix.name, place: placeOf(mix) },
        ),
      );
    this.#add(
      'unmute',
      'Open the outputs, one mix at a time.',
      [...checkOf.values(), ...mixChecks, this.#recall, this.#untouched()],
      atDesk,
    );
  }

  #add(kind: TaskKind, what: string, after: number[], about: TaskSubject): number {
    const { seconds, hands, desk } = taskKinds[kind];
    const task: Task = {
      kind,
      what,
      placeName: '',
      place: null,
      sourceId: null,
      mixId: null,
      deviceId: null,
      socketId: null,
      seconds,
      hands,
      desk,
      ...about,
      after: [...new Set(after.filter((it) => it >= 0))],
    };
    return this.tasks.push(task) - 1;
  }

  /** The task after which lines may be touched. */
  #untouched(): number {
    return this.#phantomOff >= 0 ? this.#phantomOff : this.#mute;
  }

  #isReplaced(socketId: Id): boolean {
    return this.#to.plan.patches.some(
      (it) => it.socketId === socketId && this.#to.entryOf(it.sourceId) === 'hot',
    );
  }

  #at(side: ActPatch, source: Source): TaskSubject {
    const place = placeOfSource(side.sheet, source);
    return { place, placeName: source.place || source.riser || source.name };
  }

  /** The task that pulls a line of the act before, where its socket is needed at once; made when first asked for. */
  #unplugOf(source: Source): number[] {
    const known = this.#unplugged.get(source.id);
    if (known !== undefined) return [known];
    const socketId = this.#from.plan.patches.find((it) => it.sourceId === source.id)?.socketId ?? null;
    if (socketId === null || !this.#isReplaced(socketId)) return [];
    const name = socketName(this.#from.sheet, socketId) ?? '';
    const task = this.#add('unplug', `Pull ${source.name} out of ${name}.`, [this.#untouched()], {
      sourceId: source.id,
      socketId,
      placeName: name,
      place: this.#boxPlace(socketId),
    });
    this.#unplugged.set(source.id, task);
    return [task];
  }

  readonly #unplugged = new Map<Id, number>();

  #boxPlace(socketId: Id): StagePlace | null {
    const socket = this.#to.sheet.sockets.find((it) => it.id === socketId);
    const box = this.#to.sheet.boxes.find((it) => it.id === socket?.boxId);
    return box ? placeOf(box) : null;
  }

  #waitFor(sourceId: Id, task: number | undefined): void {
    if (task === undefined || task < 0) return;
    this.#beforeCheck.set(sourceId, [...(this.#beforeCheck.get(sourceId) ?? []), task]);
  }

  /** A shared line stays plugged; its microphone or its stand may still be another one for this act. */
  #addKept(source: Source, socketId: Id): void {
    const old = this.#oldBySocket.get(socketId);
    if (!old || old.sharedLine === '') return;
    const about = { sourceId: source.id, socketId, ...this.#at(this.#to, source) };
    if (source.pickUpModel !== '' && source.pickUpModel !== old.pickUpModel)
      this.#waitFor(
        source.id,
        this.#add(
          'swap microphone',
          `Put ${source.pickUpModel} on ${source.name}.`,
          [this.#untouched()],
          about,
        ),
      );
    const moved = isMoved(placeOfSource(this.#from.sheet, old), placeOfSource(this.#to.sheet, source));
    if (moved || (source.stand !== '' && source.stand !== old.stand))
      this.#waitFor(
        source.id,
        this.#add('set stand', `Move the stand of ${source.name}.`, [this.#mute], about),
      );
  }

  #addPlugged(source: Source, socketId: Id): void {
    const name = socketName(this.#to.sheet, socketId) ?? '';
    const old = this.#oldBySocket.get(socketId);
    const before = [
      this.#untouched(),
      this.#rolledOn.get(source.riser) ?? -1,
      ...(old ? this.#unplugOf(old) : []),
    ];
    const about = { sourceId: source.id, socketId };
    this.#waitFor(
      source.id,
      this.#add('plug', `Plug ${source.name} into ${name}.`, before, {
        ...about,
        placeName: name,
        place: this.#boxPlace(socketId),
      }),
    );
    if (source.stand === '' || source.riser !== '') return;
    this.#waitFor(
      source.id,
      this.#add(
        'set stand',
        `Set ${source.name}: ${source.stand}.`,
        [this.#mute, ...this.#rolledOff.values()],
        {
          ...about,
          ...this.#at(this.#to, source),
        },
      ),
    );
  }

  /** Checks of the lines that the listeners of a mix play or sing themselves. */
  #ownChecks(mix: Mix, checkOf: ReadonlyMap<Id, number>): number[] {
    const performers = new Set(
      this.#to.sheet.listeners.filter((it) => it.mixId === mix.id).map((it) => it.performerId),
    );
    return this.#to.sheet.sources.flatMap((source) =>
      source.performerId !== null && performers.has(source.performerId) ? (checkOf.get(source.id) ?? []) : [],
    );
  }

  #listenersOf(mix: Mix): string {
    const names = this.#to.sheet.listeners
      .filter((it) => it.mixId === mix.id)
      .flatMap(
        (it) => this.#to.sheet.performers.find((performer) => performer.id === it.performerId)?.name ?? [],
      );
    return names.length > 0 ? names.join(' and ') : 'the listener';
  }
}

const atDesk: TaskSubject = { placeName: 'desk' };
