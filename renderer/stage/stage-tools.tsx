import type { ReactNode } from 'react';
import { words } from '../wording/words.ts';
import type { StageSettings } from './stage-settings.ts';

type Props = {
  settings: StageSettings;
  onSet: (part: Partial<StageSettings>) => void;
  canMirror: boolean;
  onMirror: () => void;
  onZoom: (factor: number) => void;
  onFit: () => void;
};

export const zoomStep = 1.25;

/** Whose view it is, how things move, what is shown, and how near. */
export function StageTools({ settings, onSet, canMirror, onMirror, onZoom, onFit }: Props) {
  const text = words.stage;
  const isAudience = settings.side === 'audience';
  return (
    <fieldset className="stage-tools" aria-label={text.tools}>
      <span className="stage-tool-group">
        <Switch isOn={!isAudience} onPress={() => onSet({ side: 'engineer' })}>
          {text.views.engineer}
        </Switch>
        <Switch isOn={isAudience} onPress={() => onSet({ side: 'audience' })}>
          {text.views.audience}
        </Switch>
      </span>
      <span className="stage-tool-group">
        <Switch isOn={settings.snaps} note={text.snapNote} onPress={() => onSet({ snaps: !settings.snaps })}>
          {text.snap}
        </Switch>
        <Switch
          isOn={settings.takesAlong}
          note={text.alongNote}
          onPress={() => onSet({ takesAlong: !settings.takesAlong })}
        >
          {text.along}
        </Switch>
        <Switch
          isOn={settings.showsPatterns}
          note={text.patternNote}
          onPress={() => onSet({ showsPatterns: !settings.showsPatterns })}
        >
          {text.patterns}
        </Switch>
        <Switch
          isOn={settings.showsReach}
          note={text.reachNote}
          onPress={() => onSet({ showsReach: !settings.showsReach })}
        >
          {text.reach}
        </Switch>
      </span>
      <span className="stage-tool-group">
        <button type="button" disabled={!canMirror} title={text.mirrorNote} onClick={onMirror}>
          {text.mirror}
        </button>
      </span>
      <span className="stage-tool-group">
        <button type="button" aria-label={text.farther} onClick={() => onZoom(1 / zoomStep)}>
          −
        </button>
        <button type="button" title={text.fitNote} onClick={onFit}>
          {text.fit}
        </button>
        <button type="button" aria-label={text.nearer} onClick={() => onZoom(zoomStep)}>
          +
        </button>
      </span>
    </fieldset>
  );
}

function Switch({
  isOn,
  note,
  onPress,
  children,
}: {
  isOn: boolean;
  note?: string;
  onPress: () => void;
  children: ReactNode;
}) {
  return (
    <button type="button" className="stage-switch" aria-pressed={isOn} title={note} onClick={onPress}>
      {children}
    </button>
  );
}
