import { expect, test } from 'vitest';
import { applyChange } from '../../../core/show/apply-change.ts';
import { put } from '../../../core/show/change.ts';
import { CueOutput } from '../../../core/show/rig.ts';
import { listeningSentence } from '../../../renderer/frame/listening.ts';
import { actOnScreen } from '../../../renderer/state/derive-cache.ts';
import { smallFestival } from '../../fixtures/small-festival.ts';

function sentence(mixId: string | null, show = smallFestival()): string | null {
  const open = actOnScreen(show, 'tarn');
  return open && listeningSentence(open, mixId);
}

test('a stereo pack is heard on the cue pack, with the match of levels', () => {
  expect(sentence('tarn-m2')).toMatch(
    /^Listening to Noor, mix 3, in-ears stereo, on cue pack, .*dB to match$/,
  );
});

test('a wedge is heard on the cue wedge, later by the way of the sound', () => {
  expect(sentence('tarn-m0')).toMatch(
    /^Listening to Tarn, mix 1, wedge, on cue wedge, .*dB to match, .* ms delay$/,
  );
});

test('nobody is listened to before a mix is chosen', () => {
  expect(sentence(null)).toBeNull();
  expect(sentence('no such mix')).toBeNull();
});

test('a rig without figures says that the match is unknown instead of guessing', () => {
  const cue = smallFestival().cueOutputs.get('cue-p');
  const bare = applyChange(smallFestival(), {
    label: 'x',
    put: [put('cueOutputs', CueOutput.parse({ ...cue, deviceId: null }))],
    remove: [],
  });
  expect(sentence('tarn-m2', bare)).toMatch(/level match unknown$/);
});
