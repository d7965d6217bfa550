/**
 * What must be read where people act on a sheet. The usual cautions of the trade (common practice); none of them
 * replaces local rules or people who are licensed for the work.
 */
export const cautions = {
  patching:
    'Before a line is plugged or 48 V is switched: mute the source with all its copies. Never 48 V where it says “never”.',
  levels:
    'Start levels are a draft from the wishes on paper, not a fact. Open from silence, with the performer; nothing here is a clearance for the ears.',
  outputs:
    'In-ears need a limiter in the receiver. Outputs stay muted until the patch is confirmed. Radio only where the local licence allows it.',
  cue: 'Cue levels are computed from data-sheet figures: an estimate. Turn the cue down before you change to another mix.',
  gains:
    'One owner sets the gain; the others work with trim. Say a gain change aloud before it is made. Needed gains are an estimate.',
  lineCheck: 'Mute first, touch then, listen last. No open output before its line has been checked.',
  plot: 'Power, rigging, loads and escape ways are for the competent person on site, and local rules.',
  changeover:
    'Mute and take 48 V off before a line is touched. Nothing opens by itself: unmute by hand, one source at a time.',
} as const;
