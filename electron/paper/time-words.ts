const form = new Intl.DateTimeFormat('en-GB', {
  day: 'numeric',
  month: 'short',
  year: 'numeric',
  hour: '2-digit',
  minute: '2-digit',
  hourCycle: 'h23',
});

/** Local time as it stands on paper: "25 Nov 2026, 10:26". */
export function timeWords(at: Date): string {
  return form.format(at);
}
