import iconv from 'iconv-lite';

type Encoding = 'utf-8' | 'utf-16le' | 'utf-16be' | 'utf-32le' | 'utf-32be' | 'windows-1252';

export type Decoded = { text: string; encoding: Encoding };

/**
 * Bytes to text, by byte order mark first (WHATWG Encoding Standard), then by what the bytes can be: UTF-16 shows
 * in the zero bytes of its Latin letters, UTF-8 in its strict pattern, and what is left is the single-byte
 * encoding of office programs, windows-1252. null: no text, but noise.
 * The text comes in Unicode form NFC and without control characters, so that "Flöte" is one word however typed.
 */
export function decodeText(bytes: Uint8Array): Decoded | null {
  const encoding = encodingOf(bytes);
  // iconv-lite removes the byte order mark. Node 20's own windows-1252 is wrong for the bytes 80 to 9F.
  const raw = iconv.decode(Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength), encoding);
  if (isNoise(raw)) return null;
  return { text: cleanText(raw), encoding };
}

/** NFC, without byte order marks and control characters; tab and line breaks stay. */
export function cleanText(raw: string): string {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters to take out
  return raw.normalize('NFC').replace(/[\u0000-\u0008\u000e-\u001f\u007f-\u0084\u0086-\u009f\ufeff]/g, '');
}

/** Byte order marks, the longer ones first: that of UTF-32 begins with that of UTF-16. */
const marks: readonly [Encoding, readonly number[]][] = [
  ['utf-32le', [0xff, 0xfe, 0x00, 0x00]],
  ['utf-32be', [0x00, 0x00, 0xfe, 0xff]],
  ['utf-8', [0xef, 0xbb, 0xbf]],
  ['utf-16le', [0xff, 0xfe]],
  ['utf-16be', [0xfe, 0xff]],
];

function encodingOf(bytes: Uint8Array): Encoding {
  const marked = marks.find(([, mark]) => mark.every((byte, place) => bytes[place] === byte));
  if (marked) return marked[0];
  return wideByZeros(bytes) ?? (isUtf8(bytes) ? 'utf-8' : 'windows-1252');
}

/** In UTF-16 every second byte of Latin text is zero; which one tells the order. Other text has no zero byte. */
function wideByZeros(bytes: Uint8Array): 'utf-16le' | 'utf-16be' | null {
  const sample = bytes.subarray(0, 4096);
  const zeros = [0, 0];
  sample.forEach((byte, place) => {
    if (byte === 0) zeros[place % 2] = (zeros[place % 2] ?? 0) + 1;
  });
  const [even = 0, odd = 0] = zeros;
  const enough = sample.length / 5;
  if (odd > enough && even < odd / 10) return 'utf-16le';
  if (even > enough && odd < even / 10) return 'utf-16be';
  return null;
}

function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return true;
  } catch {
    return false;
  }
}

/** Text has hardly any control characters; bytes of another kind have many. */
function isNoise(text: string): boolean {
  const sample = text.slice(0, 65_536);
  // biome-ignore lint/suspicious/noControlCharactersInRegex: counted because text has none of them
  const odd = sample.match(/[\u0000-\u0008\u000e-\u001f\u007f\ufffd]/g)?.length ?? 0;
  return odd > 2 && odd > sample.length / 100;
}
