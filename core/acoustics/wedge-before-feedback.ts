import { type FeedbackConditions, feedbackCaution, potentialAcousticGainDb } from './feedback.ts';
import { requireLevel } from './range.ts';

/** One voice and the wedge it comes out of again. */
export type WedgeAndVoice = {
  /** Level of the voice a metre away, in dB SPL. */
  voiceDbSplAt1M: number;
  mouthToMicrophoneM: number;
  microphoneToWedgeM: number;
  wedgeToEarM: number;
};

/**
 * Loudest that a wedge may bring the voice to the performer's ear before it rings, in dB SPL, with the caution
 * that stands beside the figure. -Infinity for no voice. It is the potential acoustic gain over the voice heard
 * from a metre away. Source: as for `potentialAcousticGainDb`.
 */
export function loudestWedgeBeforeFeedback(
  stage: WedgeAndVoice,
  given: Partial<FeedbackConditions> = {},
): { levelDbSpl: number; caution: string } {
  const { voiceDbSplAt1M, mouthToMicrophoneM, microphoneToWedgeM, wedgeToEarM } = stage;
  requireLevel({ voiceDbSplAt1M });
  const path = {
    talkerToListenerM: 1,
    microphoneToLoudspeakerM: microphoneToWedgeM,
    loudspeakerToListenerM: wedgeToEarM,
    talkerToMicrophoneM: mouthToMicrophoneM,
  };
  return { levelDbSpl: voiceDbSplAt1M + potentialAcousticGainDb(path, given), caution: feedbackCaution };
}
