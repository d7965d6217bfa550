import { describe, expect, test } from 'vitest';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import { derivePaths, pathFrom, pathKey, pathTo, type SignalPaths } from '../../../core/derive/path.ts';
import { ActDraft } from '../../helpers/clean-act.ts';
import { sheetOf } from '../../helpers/sheet-of.ts';

function pathsOf(draft: ActDraft): { paths: SignalPaths; codes: string[] } {
  const sheet = sheetOf(draft.rows);
  const derived = deriveAct(sheet);
  return { paths: derivePaths(sheet, derived), codes: derived.findings.map((finding) => finding.code) };
}

const names = (paths: SignalPaths) => paths.nodes.map((node) => `${node.at}: ${node.name}`);

describe('the path of a signal', () => {
  test('a source goes from its player to every listener, and to the hall', () => {
    const { paths } = pathsOf(new ActDraft());
    expect(names(pathFrom(paths, pathKey('player', 'Noor')))).toEqual([
      'player: Noor',
      'source: vocal',
      'socket: A1',
      'copy: vocal',
      'copy: vocal',
      'main mix: Main mix',
      'mix: Noor wedge',
      'mix: Tam ears',
      'cue: cue wedge',
      'cue: cue pack',
      'output: output 1',
      'output: output 2',
      'output: output 3',
      'output: output 10',
      'output: output 11',
      'output: output 12',
      'device: wedge 1',
      'device: pack 1',
      'device: engineer pack',
      'device: engineer wedge',
      'listener: Noor',
      'listener: Tam',
    ]);
  });

  test('a device is reached by all that its mix holds, and by nothing else', () => {
    const { paths } = pathsOf(new ActDraft());
    const reached = names(pathTo(paths, pathKey('device', 'wedge 1')));
    expect(reached.filter((name) => name.startsWith('source'))).toEqual(['source: vocal', 'source: spare']);
    expect(reached).not.toContain('mix: Tam ears');
  });

  test('an output carries the mix that leaves there; one that nothing uses carries nothing', () => {
    const { paths } = pathsOf(new ActDraft());
    expect(names(pathTo(paths, pathKey('output', 'output 1')))).toContain('mix: Noor wedge');
    expect(names(pathTo(paths, pathKey('output', 'output 7')))).toEqual(['output: output 7']);
  });

  test('sends carry their start level', () => {
    const { paths } = pathsOf(new ActDraft());
    const send = paths.links.find(
      (link) => link.from === pathKey('copy', 'vocal', 'monitors') && link.to === pathKey('mix', 'Tam ears'),
    );
    expect(send).toMatchObject({ levelDb: -6, detail: 'pre-fader' });
  });

  test('a spare line in use is the way of its source', () => {
    const { paths } = pathsOf(
      new ActDraft().add('alternates', {
        id: 'other',
        sourceId: 'vocal',
        kind: 'spare line',
        socketId: 'socket 16',
        inUse: true,
      }),
    );
    expect(names(pathFrom(paths, pathKey('source', 'vocal')))).toContain('socket: A16');
    expect(names(pathFrom(paths, pathKey('source', 'vocal')))).not.toContain('socket: A1');
  });

  test('a mix of the band’s own desk is reached by the split, and its device by that mix', () => {
    const { paths } = pathsOf(
      new ActDraft().set('mixes', 'Tam ears', { mixedAt: 'elsewhere', ownDevice: true }),
    );
    const split = paths.links.find(
      (link) => link.to === pathKey('mix', 'Tam ears') && link.detail === 'split',
    );
    expect(split).toBeDefined();
    expect(names(pathTo(paths, pathKey('listener', 'Tam')))).toContain('device: Own device of Tam ears');
  });

  test('an effect comes back from the copy that feeds it', () => {
    const { paths } = pathsOf(
      new ActDraft()
        .add('sources', { id: 'reverb', kind: 'effect return', audience: 'monitors only' })
        .add('wishes', { mixId: 'Noor wedge', sourceId: 'reverb', amount: 'little' })
        .add('decisions', {
          about: 'effect send',
          sourceId: 'vocal',
          returnSourceId: 'reverb',
          purpose: 'monitors',
        }),
    );
    expect(names(pathTo(paths, pathKey('source', 'reverb')))).toContain('source: vocal');
  });

  test('findings stand where they arise: on the node, or on the send', () => {
    const { paths, codes } = pathsOf(
      new ActDraft()
        .set('sources', 'room', { phantom: 'not said' })
        .add('decisions', { about: 'feed', mixId: 'Noor wedge', sourceId: 'vocal', purpose: 'foh' }),
    );
    const at = (findings: readonly number[]) => findings.map((place) => codes[place]);
    const room = paths.nodes.find((node) => node.key === pathKey('source', 'room'));
    expect(at(room?.findings ?? [])).toEqual(['phantom-not-said']);
    const marked = paths.links.filter((link) => link.findings.length > 0);
    expect(marked.map((link) => [link.from, link.to, at(link.findings)])).toEqual([
      [pathKey('copy', 'vocal', 'foh'), pathKey('mix', 'Noor wedge'), ['foh-copy-beside-monitor-copy']],
    ]);
  });

  test('a key that is not there has no path', () => {
    const { paths } = pathsOf(new ActDraft());
    expect(pathFrom(paths, pathKey('source', 'theremin'))).toEqual({ nodes: [], links: [] });
  });
});
