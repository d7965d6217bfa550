import type { Mix, Source } from '../../core/show/act.ts';
import type { ActSheet } from '../../core/show/act-sheet.ts';
import { placeOfCue } from '../../core/show/cue-place.ts';
import { placeOfSource } from '../../core/show/place-of-source.ts';
import type { Id } from '../../core/show/rig.ts';
import { placeOf, type StagePlace } from '../../core/show/stage-place.ts';
import type { MicPattern } from '../../core/show/words.ts';
import { whoHears } from '../parts/names.ts';
import { words } from '../wording/words.ts';

export const stageKinds = ['box', 'cue', 'performer', 'wedge', 'source'] as const;
export type StageKind = (typeof stageKinds)[number];

/** Something with a place on the stage, whichever table it comes from. */
export type StageThing = {
  key: string;
  kind: StageKind;
  id: Id;
  /** As it is called in a list: "Mara", "M2 wedge, Mara". */
  name: string;
  /** As it is written on the drawing: a name, "M2", a line's number. */
  label: string;
  /** Where it stands; null: it has no place yet. */
  at: StagePlace | null;
  /** False where it only stands where its performer does. */
  ownPlace: boolean;
  /** null: not said, or nothing that points anywhere. */
  aimDeg: number | null;
  /** Of a line's microphone; null: not said, or no line. */
  pattern: MicPattern | null;
  performerId: Id | null;
};

export type PlacedThing = StageThing & { at: StagePlace };

export const isPlaced = (thing: StageThing): thing is PlacedThing => thing.at !== null;

/** What points somewhere and can be turned. */
export const hasAim = ({ kind }: Pick<StageThing, 'kind'>) => kind === 'wedge' || kind === 'source';

/** Belongs to the house: moving it moves it for every act. */
export const isOfHouse = ({ kind }: Pick<StageThing, 'kind'>) => kind === 'box' || kind === 'cue';

export const keyOfThing = (kind: StageKind, id: Id) => `${kind} ${id}`;

/** Everything of an act and its rig that can stand on the stage, in the order in which it is drawn. */
export function thingsOnStage(sheet: ActSheet): StageThing[] {
  return [
    ...sheet.boxes.map((box) =>
      thing('box', box, { name: words.stage.boxName(box.name), label: box.name, at: placeOf(box) }),
    ),
    thing('cue', sheet.rig, {
      name: words.stage.cueName,
      label: words.stage.cueLabel,
      at: placeOfCue(sheet.rig),
    }),
    ...sheet.performers.map((it) =>
      thing('performer', it, { name: it.name, label: it.name, at: placeOf(it), performerId: it.id }),
    ),
    ...sheet.mixes.flatMap((mix, at) => (standsOnStage(mix) ? [wedge(sheet, mix, at + 1)] : [])),
    ...sheet.sources.flatMap((it, at) => (comesFromStage(it) ? [line(sheet, it, at + 1)] : [])),
  ];
}

const standsOnStage = (mix: Mix) => mix.deviceKind !== null && mix.deviceKind !== 'in-ear';
const comesFromStage = (source: Source) => source.returnsMixId === null && source.returnsCueOutputId === null;

type Given = Pick<StageThing, 'name' | 'label' | 'at'> & Partial<StageThing>;

function thing(kind: StageKind, { id }: { id: Id }, given: Given): StageThing {
  return {
    key: keyOfThing(kind, id),
    kind,
    id,
    ownPlace: given.at !== null,
    aimDeg: null,
    pattern: null,
    performerId: null,
    ...given,
  };
}

function wedge(sheet: ActSheet, mix: Mix, number: number): StageThing {
  const kind = mix.deviceKind === null ? words.deviceUnknown : words.deviceKind[mix.deviceKind];
  const label = words.stage.wedgeLabel(number, mix.deviceCount);
  return thing('wedge', mix, {
    name: words.stage.wedgeName(label, kind, whoHears(sheet, mix)),
    label,
    at: placeOf(mix),
    aimDeg: mix.aimDeg,
    performerId: onlyListener(sheet, mix.id),
  });
}

/** A wedge that one performer hears goes where they go; one that several hear stays. */
function onlyListener(sheet: ActSheet, mixId: Id): Id | null {
  const [first, second] = sheet.listeners.filter((it) => it.mixId === mixId);
  return first && !second ? first.performerId : null;
}

function line(sheet: ActSheet, source: Source, number: number): StageThing {
  return thing('source', source, {
    name: words.stage.lineName(number, source.name),
    label: `${number}`,
    at: placeOfSource(sheet, source),
    ownPlace: placeOf(source) !== null,
    aimDeg: source.aimDeg,
    pattern: source.pattern,
    performerId: source.performerId,
  });
}

/** What moves when the chosen things move: a performer takes along what is theirs, if that is wanted. */
export function withTheirThings(
  things: readonly StageThing[],
  chosen: ReadonlySet<string>,
  takesAlong: boolean,
): ReadonlySet<string> {
  const movers = new Set(
    things.flatMap((it) => (it.kind === 'performer' && chosen.has(it.key) ? [it.id] : [])),
  );
  const isTheirs = (it: StageThing) => it.performerId !== null && movers.has(it.performerId);
  // What has no place of its own stands where its performer does, wanted or not.
  return new Set(
    things.flatMap((it) =>
      chosen.has(it.key) || (isTheirs(it) && (takesAlong || !it.ownPlace)) ? [it.key] : [],
    ),
  );
}
