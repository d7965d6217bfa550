/** Level as it is read: a true minus, no more places than the number needs. Null: off. */
export function levelText(levelDb: number | null): string {
  if (levelDb === null) return 'off';
  const rounded = Math.round(levelDb * 10) / 10;
  return rounded < 0 ? `−${-rounded}` : rounded === 0 ? '0' : `${rounded}`;
}

/** A difference of levels with its sign and unit: "+3 dB", "−6 dB", "0 dB". */
export function offsetText(offsetDb: number): string {
  const text = levelText(offsetDb);
  return `${offsetDb > 0 && text !== '0' ? '+' : ''}${text} dB`;
}

/** A number as people type it, "−6", "+1.5" or "1,4"; null where the text is none. */
export function parseNumber(text: string): number | null {
  const typed = text.trim().replace('−', '-').replace(',', '.');
  return /^[+-]?\d+(?:\.\d+)?$/.test(typed) ? Number(typed) : null;
}

/** Minutes from midnight as a clock shows them; past midnight it starts again at 00:00. */
export function timeText(minute: number): string {
  const two = (n: number) => `${n}`.padStart(2, '0');
  return `${two(Math.floor(minute / 60) % 24)}:${two(minute % 60)}`;
}

/** The time of day of an ISO 8601 time, on this machine's clock. */
export function clockText(iso: string): string {
  const time = new Date(iso);
  return timeText(time.getHours() * 60 + time.getMinutes());
}

/** Minutes from midnight from "14:00", "14.00" or "1400"; null where it is no time. */
export function parseTime(text: string): number | null {
  const match = /^\s*(\d{1,2})[:. ]?(\d{2})\s*$/.exec(text);
  if (!match) return null;
  const [hour, minute] = [Number(match[1]), Number(match[2])];
  return hour <= 47 && minute <= 59 ? hour * 60 + minute : null;
}
