import { type ReactNode, useId } from 'react';
import type { Finding } from '../../core/derive/derived.ts';
import { put } from '../../core/show/change.ts';
import { micPatterns } from '../../core/show/words.ts';
import { FindingsList } from '../parts/findings-list.tsx';
import type { LabelledText } from '../parts/labelled-field.tsx';
import { useRowFields } from '../parts/use-row-fields.ts';
import type { ActOnScreen } from '../state/derive-cache.ts';
import { useHere } from '../state/here.tsx';
import { words } from '../wording/words.ts';
import { BoxReach } from './box-reach.tsx';
import { CueDistance } from './cue-distance.tsx';
import { FieldGrid } from './field-grid.tsx';
import { Hearing } from './hearing.tsx';
import { bearingToListener } from './proposed-place.ts';
import { hasAim, isOfHouse, type StageThing } from './stage-objects.ts';

type Props = {
  open: ActOnScreen;
  thing: StageThing;
  findings: readonly Finding[];
  onTurn: (byDeg: number) => void;
  onAim: (aimDeg: number) => void;
  onTakeOff: () => void;
  onChoose: (key: string) => void;
  onFinding: (finding: Finding) => void;
};

const turnSteps = [-15, -1, 1, 15];

/** One thing in numbers, each of which can be typed, and what follows from where it stands. */
export function ThingPanel(props: Props) {
  const { open, thing, findings, onTakeOff, onChoose, onFinding } = props;
  const text = words.stage;
  return (
    <>
      <p className="quiet">{text.kinds[thing.kind]}</p>
      <h2>{thing.name}</h2>
      <p>{placeText(open, thing)}</p>
      {isOfHouse(thing) && <p className="quiet">{text.ofHouse}</p>}
      <FieldGrid fields={useFieldsOf(open, thing)} />
      {thing.kind === 'source' && <PatternField open={open} thing={thing} />}
      {hasAim(thing) && <TurnButtons {...props} />}
      {thing.kind !== 'box' && <p className="quiet stage-note">{text.acrossNote}</p>}
      {thing.ownPlace && (
        <button type="button" onClick={onTakeOff}>
          {text.takeOff}
        </button>
      )}
      {thing.kind === 'cue' && <CueDistance open={open} />}
      {thing.kind === 'box' && <BoxReach open={open} boxId={thing.id} onChoose={onChoose} />}
      {hasAim(thing) && thing.at && <Hearing open={open} thing={thing} onChoose={onChoose} />}
      {findings.length > 0 && (
        <Section head={text.findings}>
          <FindingsList findings={findings} onGo={onFinding} />
        </Section>
      )}
    </>
  );
}

function Section({ head, children }: { head: string; children: ReactNode }) {
  return (
    <section className="stage-section">
      <h3>{head}</h3>
      {children}
    </section>
  );
}

function placeText({ sheet }: ActOnScreen, { at, ownPlace, performerId, kind }: StageThing): string {
  const text = words.stage;
  if (!at) return text.noPlace;
  const where = text.at(at.xM, at.yM);
  const performer = sheet.performers.find((it) => it.id === performerId);
  return kind === 'source' && !ownPlace && performer ? `${where}, ${text.standsWith(performer.name)}` : where;
}

/** The numbers and words of a thing that say how it stands. */
function useFieldsOf({ sheet }: ActOnScreen, { kind, id, name }: StageThing): LabelledText[] {
  const field = useRowFields();
  const heads = words.stage.fields;
  const row = <T extends { id: string }>(rows: readonly T[]) => rows.find((it) => it.id === id);
  switch (kind) {
    case 'performer': {
      const it = row(sheet.performers);
      if (!it) return [];
      const of = (key: 'xM' | 'yM') => field('performers', it, name, key, heads[key]);
      return [of('xM'), of('yM'), field('performers', it, name, 'place', heads.place, 'text')];
    }
    case 'source': {
      const it = row(sheet.sources);
      if (!it) return [];
      const numbers = (['xM', 'yM', 'aimDeg', 'tiltDeg', 'heightM'] as const).map((key) =>
        field('sources', it, name, key, heads[key]),
      );
      const texts = (['riser', 'place'] as const).map((key) =>
        field('sources', it, name, key, heads[key], 'text'),
      );
      return [...numbers, ...texts];
    }
    case 'wedge': {
      const it = row(sheet.mixes);
      if (!it) return [];
      const numbers = (['xM', 'yM', 'aimDeg'] as const).map((key) =>
        field('mixes', it, name, key, heads[key]),
      );
      return [...numbers, field('mixes', it, name, 'place', heads.place, 'text')];
    }
    case 'box': {
      const it = row(sheet.boxes);
      return it
        ? (['xM', 'yM', 'reachM'] as const).map((key) => field('boxes', it, name, key, heads[key]))
        : [];
    }
    case 'cue':
      return [
        field('rigs', sheet.rig, name, 'cueXM', heads.xM),
        field('rigs', sheet.rig, name, 'cueYM', heads.yM),
      ];
  }
}

function PatternField({ open, thing }: { open: ActOnScreen; thing: StageThing }) {
  const { change } = useHere();
  const id = useId();
  const source = open.sheet.sources.find((it) => it.id === thing.id);
  const text = words.stage;
  if (!source) return null;
  const choose = (value: string) => {
    const pattern = micPatterns.find((it) => it === value) ?? null;
    const label = text.did.pattern(thing.name);
    change({ label, put: [put('sources', { ...source, pattern })], remove: [] });
  };
  return (
    <>
      <div className="stage-field">
        <label htmlFor={id}>{text.fields.pattern}</label>
        <select id={id} value={source.pattern ?? ''} onChange={(event) => choose(event.target.value)}>
          <option value="">{text.notSaid}</option>
          {micPatterns.map((pattern) => (
            <option key={pattern} value={pattern}>
              {text.patternNames[pattern]}
            </option>
          ))}
        </select>
      </div>
      {source.pattern !== null && <p className="quiet stage-note">{text.patternNote}</p>}
    </>
  );
}

function TurnButtons({ open, thing, onTurn, onAim }: Props) {
  const text = words.stage;
  const bearing = thing.kind === 'wedge' ? bearingToListener(open.sheet, thing) : null;
  const listener = open.sheet.performers.find((it) => it.id === thing.performerId);
  return (
    <p className="stage-turns">
      {turnSteps.map((step) => (
        <button key={step} type="button" aria-label={text.turnByLabel(step)} onClick={() => onTurn(step)}>
          {text.turnBy(step)}
        </button>
      ))}
      {bearing !== null && listener && (
        <button type="button" onClick={() => onAim(bearing)}>
          {text.aimAtListener(listener.name)}
        </button>
      )}
    </p>
  );
}
