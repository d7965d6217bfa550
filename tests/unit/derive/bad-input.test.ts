import { describe, expect, test } from 'vitest';
import { deriveAct } from '../../../core/derive/derive-act.ts';
import { derivePaths } from '../../../core/derive/path.ts';
import { ActDraft } from '../../helpers/clean-act.ts';
import { rows, sheetOf, type TestRow, type TestRows } from '../../helpers/sheet-of.ts';

function problemsOf(given: TestRows): string[] {
  const sheet = sheetOf(given);
  const derived = deriveAct(sheet);
  derivePaths(sheet, derived);
  return [...new Set(derived.findings.map((finding) => finding.code))];
}

describe('what nobody would enter gets a named problem, never a crash or a hang', () => {
  test.each<[string, TestRows, string]>([
    ['an act with nothing in it', {}, 'nothing-to-plan'],
    [
      'a desk without a channel',
      { rig: { channelCount: 0 }, sources: [{ id: 'a' }] },
      'source-without-channel',
    ],
    ['a rig without a socket', { sources: [{ id: 'a' }] }, 'source-without-socket'],
    ['a rig without a bus', { mixes: [{ id: 'a' }] }, 'mix-without-bus'],
    ['a rig without an output', { mixes: [{ id: 'a' }] }, 'mix-without-output'],
    ['a box without sockets', { boxes: [{ id: 'A' }], sources: [{ id: 'a' }] }, 'source-without-socket'],
    ['a pair with itself', { sources: [{ id: 'a', pairSourceId: 'a' }] }, 'pair-not-mutual'],
    ['a pair with nobody', { sources: [{ id: 'a', pairSourceId: 'gone' }] }, 'names-what-is-not-there'],
    [
      'a device decided that is gone',
      { mixes: [{ id: 'a' }], decisions: [{ id: 'd', about: 'device', mixId: 'a', deviceId: 'gone' }] },
      'names-what-is-not-there',
    ],
    [
      'a mix that is the same as itself',
      { mixes: [{ id: 'a' }], wishes: [{ id: 'w', mixId: 'a', sameAsMixId: 'a' }] },
      'wishes-in-a-circle',
    ],
  ])('%s: %o', (_, given, code) => {
    expect(problemsOf(given)).toContain(code);
  });

  const decided = (about: string, row: TestRow): TestRows => ({
    sources: [{ id: 'a' }],
    mixes: [{ id: 'a' }],
    decisions: [{ id: 'd', about, ...row }],
  });
  test.each<[string, TestRows]>([
    ['an output on a box', { outputs: [{ id: 'a', boxId: 'gone' }] }],
    ['a device wired to an output', { devices: [{ id: 'a', kind: 'wedge', outputId: 'gone' }] }],
    ['the second output of a device', { devices: [{ id: 'a', kind: 'wedge', secondOutputId: 'gone' }] }],
    ['the output of a cue', { cueOutputs: [{ id: 'a', kind: 'wedge', outputId: 'gone' }] }],
    ['the second output of a cue', { cueOutputs: [{ id: 'a', kind: 'wedge', secondOutputId: 'gone' }] }],
    ['the bus of a cue', { cueOutputs: [{ id: 'a', kind: 'wedge', busId: 'gone' }] }],
    ['the device of a cue', { cueOutputs: [{ id: 'a', kind: 'wedge', deviceId: 'gone' }] }],
    ['whose source it is', { sources: [{ id: 'a', performerId: 'gone' }] }],
    ['a mix that comes back', { sources: [{ id: 'a', returnsMixId: 'gone' }] }],
    ['a cue that comes back', { sources: [{ id: 'a', returnsCueOutputId: 'gone' }] }],
    ['who listens', { mixes: [{ id: 'a' }], listeners: [{ id: 'l', mixId: 'a', performerId: 'gone' }] }],
    [
      'a wish for a source',
      { mixes: [{ id: 'a' }], wishes: [{ id: 'w', mixId: 'a', sourceId: 'gone', amount: 'some' }] },
    ],
    [
      'a wish for what another mix holds',
      { mixes: [{ id: 'a' }], wishes: [{ id: 'w', mixId: 'a', sameAsMixId: 'gone' }] },
    ],
    [
      'the socket of a spare line',
      {
        sources: [{ id: 'a' }],
        alternates: [{ id: 's', sourceId: 'a', kind: 'spare line', socketId: 'gone' }],
      },
    ],
    ['a socket that was decided', decided('socket', { sourceId: 'a', socketId: 'gone' })],
    ['a bus that was decided', decided('bus', { mixId: 'a', busId: 'gone' })],
    ['an output that was decided', decided('output', { mixId: 'a', outputId: 'gone' })],
    ['a cue that was decided', decided('cue', { mixId: 'a', cueOutputId: 'gone' })],
    ['a source of a decided feed', decided('feed', { mixId: 'a', sourceId: 'gone', purpose: 'foh' })],
    ['a mix of a decided level', decided('level', { mixId: 'gone', sourceId: 'a', levelDb: 0 })],
    [
      'an effect that was decided on',
      decided('effect send', { sourceId: 'a', returnSourceId: 'gone', purpose: 'foh' }),
    ],
  ])('%s names what is not there', (_, given) => {
    expect(problemsOf(given)).toContain('names-what-is-not-there');
  });

  test('what is not there is not there for this act: another act may well have it', () => {
    const { findings } = deriveAct(sheetOf({ sources: [{ id: 'a', pairSourceId: 'of another act' }] }));
    const said = findings.find((finding) => finding.code === 'names-what-is-not-there')?.cause;
    expect(said).toContain('"of another act", which is not in this act or its rig');
  });

  test('a mix that comes back into itself', () => {
    const draft = new ActDraft()
      .add('sources', { id: 'return', audience: 'monitors only', returnsMixId: 'Noor wedge' })
      .add('wishes', { mixId: 'Noor wedge', sourceId: 'return', amount: 'little' });
    expect(problemsOf(draft.rows)).toContain('signal-in-a-circle');
  });

  test('a cue that reaches a mix that reaches the cue', () => {
    const draft = new ActDraft()
      .add('sources', { id: 'return', audience: 'monitors only', returnsCueOutputId: 'cue pack' })
      .add('wishes', { mixId: 'Tam ears', sourceId: 'return', amount: 'little' });
    expect(problemsOf(draft.rows)).toContain('signal-in-a-circle');
  });

  test('a cue that comes back but reaches no mix it hears is no circle', () => {
    const draft = new ActDraft()
      .add('sources', { id: 'return', audience: 'monitors only', returnsCueOutputId: 'cue pack' })
      .add('wishes', { mixId: 'Noor wedge', sourceId: 'return', amount: 'little' });
    expect(problemsOf(draft.rows)).not.toContain('signal-in-a-circle');
  });

  test('two effects that feed each other', () => {
    const send = (sourceId: string, returnSourceId: string) => ({
      about: 'effect send',
      sourceId,
      returnSourceId,
      purpose: 'foh',
    });
    const draft = new ActDraft()
      .add('sources', { id: 'reverb', kind: 'effect return' }, { id: 'echo', kind: 'effect return' })
      .add('decisions', send('reverb', 'echo'), send('echo', 'reverb'));
    expect(problemsOf(draft.rows)).toContain('signal-in-a-circle');
  });

  test('thousands of sources on a desk of 1,024 channels', () => {
    const count = 3000;
    const sources = Array.from({ length: count }, (_, at) => ({
      id: `source ${at}`,
      kind: at % 2 ? 'vocal' : 'kick in',
    }));
    const sheet = sheetOf({
      rig: { channelCount: 1024 },
      boxes: [{ id: 'A' }],
      sockets: rows(1000, { id: 'socket', boxId: 'A' }),
      sources,
      mixes: Array.from({ length: 40 }, (_, at) => ({ id: `mix ${at}`, deviceKind: 'wedge' })),
      wishes: Array.from({ length: 40 }, (_, at) => ({
        id: `wish ${at}`,
        mixId: `mix ${at}`,
        group: 'everything',
        amount: 'some',
      })),
    });
    const { findings, feeds } = deriveAct(sheet);
    expect(findings.filter((finding) => finding.code === 'source-without-channel').length).toBe(count - 1024);
    expect(feeds.flat().filter((feed) => feed.levelDb !== null).length).toBe(1024 * 40);
  });

  test('names of 200 characters, from right to left, with signs that mean something elsewhere', () => {
    const name = `${'שלום '.repeat(30)}{mix} $1 <b>`;
    const draft = new ActDraft().set('sources', 'vocal', { name, audience: 'not here' });
    const { findings } = deriveAct(sheetOf(draft.rows));
    const said = findings.find((finding) => finding.code === 'source-cannot-be-heard')?.cause;
    expect(said).toContain(`"${name}"`);
  });
});
