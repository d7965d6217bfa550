/** Names that Windows keeps for devices, whatever comes after the point. */
const kept = /^(con|prn|aux|nul|com\d|lpt\d)$/i;

/** A file name that every file system takes, made of words of any script: "Paper Herons - Line check". */
export function fileName(words: readonly string[]): string {
  const joined = words.filter((it) => it.trim() !== '').join(' - ');
  const clean = joined
    .replace(/[<>:"/\\|?*\p{Cc}\p{Cf}]/gu, ' ')
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/^\.+|[. ]+$/g, '');
  const short = shortBytes(clean, 150).trim();
  return short === '' || kept.test(short) ? `Sheet ${short}`.trim() : short;
}

/** A file system counts bytes, not signs. */
function shortBytes(text: string, most: number): string {
  let out = '';
  for (const sign of text) {
    if (Buffer.byteLength(out + sign) > most) break;
    out += sign;
  }
  return out;
}
