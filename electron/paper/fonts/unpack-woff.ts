import { inflateSync } from 'node:zlib';

const headLength = 44;
const entryLength = 20;

/**
 * A WOFF 1.0 file (W3C Recommendation of 2012) as the plain font it was made from; any other font as it is. The PDF
 * library would otherwise unpack each table slowly, and again for every document.
 */
export function unpackWoff(bytes: Uint8Array): Uint8Array {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.byteLength < headLength || view.getUint32(0) !== 0x774f4646) return bytes;
  const count = view.getUint16(12);
  const tables = Array.from({ length: count }, (_, at) =>
    readTable(bytes, view, headLength + at * entryLength),
  );
  return writeFont(view.getUint32(4), tables);
}

type Table = { tag: number; checksum: number; data: Uint8Array };

function readTable(bytes: Uint8Array, view: DataView, entry: number): Table {
  const offset = view.getUint32(entry + 4);
  const packedLength = view.getUint32(entry + 8);
  const length = view.getUint32(entry + 12);
  const packed = bytes.subarray(offset, offset + packedLength);
  const data = packedLength < length ? inflateSync(packed) : packed;
  return { tag: view.getUint32(entry), checksum: view.getUint32(entry + 16), data };
}

/** Table directory and tables of the OpenType specification, each table on a multiple of four bytes. */
function writeFont(flavour: number, tables: readonly Table[]): Uint8Array {
  const padded = (length: number) => (length + 3) & ~3;
  const start = 12 + tables.length * 16;
  const out = new Uint8Array(tables.reduce((sum, { data }) => sum + padded(data.length), start));
  const view = new DataView(out.buffer);
  const power = Math.floor(Math.log2(tables.length));
  view.setUint32(0, flavour);
  view.setUint16(4, tables.length);
  view.setUint16(6, 16 * 2 ** power);
  view.setUint16(8, power);
  view.setUint16(10, 16 * tables.length - 16 * 2 ** power);
  let offset = start;
  tables.forEach(({ tag, checksum, data }, at) => {
    const entry = 12 + at * 16;
    view.setUint32(entry, tag);
    view.setUint32(entry + 4, checksum);
    view.setUint32(entry + 8, offset);
    view.setUint32(entry + 12, data.length);
    out.set(data, offset);
    offset += padded(data.length);
  });
  return out;
}
