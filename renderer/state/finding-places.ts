import type { Finding, Subject } from '../../core/derive/derived.ts';
import { feedKey } from '../../core/show/feed-key.ts';
import type { Id } from '../../core/show/rig.ts';
import type { ActOnScreen } from './derive-cache.ts';

/** Where each finding of an act is marked. A finding on a socket or a bus is marked at who uses it. */
export type FindingPlaces = {
  ofSource: ReadonlyMap<Id, Finding[]>;
  ofMix: ReadonlyMap<Id, Finding[]>;
  /** By `mixId sourceId`. */
  ofFeed: ReadonlyMap<string, Finding[]>;
};

type Target = { sourceId?: Id; mixId?: Id };

export function findingPlaces(open: ActOnScreen): FindingPlaces {
  const ofSource = new Map<Id, Finding[]>();
  const ofMix = new Map<Id, Finding[]>();
  const ofFeed = new Map<string, Finding[]>();
  for (const finding of open.derived.findings)
    for (const { sourceId, mixId } of finding.subjects.flatMap((subject) => targetsOf(open, subject))) {
      if (sourceId !== undefined && mixId !== undefined) add(ofFeed, feedKey({ mixId, sourceId }), finding);
      else if (sourceId !== undefined) add(ofSource, sourceId, finding);
      else if (mixId !== undefined) add(ofMix, mixId, finding);
    }
  return { ofSource, ofMix, ofFeed };
}

/** The first place on the mixes that a finding leads to; null where it is about the act as a whole. */
export function placeOfFinding(open: ActOnScreen, finding: Finding): Target | null {
  const targets = finding.subjects.flatMap((subject) => targetsOf(open, subject));
  return targets.find((it) => it.mixId !== undefined && it.sourceId !== undefined) ?? targets[0] ?? null;
}

function targetsOf({ sheet, derived: { plan, cues } }: ActOnScreen, subject: Subject): Target[] {
  switch (subject.of) {
    case 'source':
      return [{ sourceId: subject.id }];
    case 'mix':
      return [{ mixId: subject.id }];
    case 'feed':
      return [{ mixId: subject.mixId, sourceId: subject.sourceId }];
    case 'performer': {
      const mixes = sheet.listeners.filter((it) => it.performerId === subject.id);
      if (mixes.length > 0) return mixes.map(({ mixId }) => ({ mixId }));
      return sheet.sources.filter((it) => it.performerId === subject.id).map(({ id }) => ({ sourceId: id }));
    }
    case 'socket':
      return plan.patches.filter((it) => it.socketId === subject.id).map(({ sourceId }) => ({ sourceId }));
    case 'channel':
      return plan.copies.filter((it) => it.channel === subject.channel).map(({ sourceId }) => ({ sourceId }));
    case 'bus':
      return plan.mixes.filter((it) => it.busIds.includes(subject.id)).map(({ mixId }) => ({ mixId }));
    case 'output':
      return plan.mixes.filter((it) => it.outputIds.includes(subject.id)).map(({ mixId }) => ({ mixId }));
    case 'device':
      return plan.mixes.filter((it) => it.deviceIds.includes(subject.id)).map(({ mixId }) => ({ mixId }));
    case 'cueOutput':
      return cues.filter((it) => it.cueOutputId === subject.id).map(({ mixId }) => ({ mixId }));
    case 'act':
      return [];
  }
}

function add<K>(map: Map<K, Finding[]>, key: K, finding: Finding): void {
  const found = map.get(key);
  if (!found) map.set(key, [finding]);
  else if (!found.includes(finding)) found.push(finding);
}
