import { useEffect, useState } from 'react';
import type { Side } from './stage-view.ts';

/** How this window draws the stage and how things move in it. Not part of the show. */
export type StageSettings = {
  side: Side;
  snaps: boolean;
  takesAlong: boolean;
  showsPatterns: boolean;
  showsReach: boolean;
};

const key = 'foldbook.stage';
const usual: StageSettings = {
  side: 'engineer',
  snaps: true,
  takesAlong: true,
  showsPatterns: true,
  showsReach: false,
};

export function useStageSettings() {
  const [settings, setSettings] = useState(remembered);
  useEffect(() => localStorage.setItem(key, JSON.stringify(settings)), [settings]);
  const set = (part: Partial<StageSettings>) => setSettings((now) => ({ ...now, ...part }));
  return { settings, set };
}

/** What cannot be read any more is as the program would have it. */
function remembered(): StageSettings {
  const kept = parsed(localStorage.getItem(key));
  const flag = (name: 'snaps' | 'takesAlong' | 'showsPatterns' | 'showsReach') =>
    typeof kept[name] === 'boolean' ? kept[name] : usual[name];
  return {
    side: kept.side === 'audience' ? 'audience' : usual.side,
    snaps: flag('snaps'),
    takesAlong: flag('takesAlong'),
    showsPatterns: flag('showsPatterns'),
    showsReach: flag('showsReach'),
  };
}

function parsed(text: string | null): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(text ?? '{}');
    return value && typeof value === 'object' ? (value as Readonly<Record<string, unknown>>) : {};
  } catch {
    return {};
  }
}
