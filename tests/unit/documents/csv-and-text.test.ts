import iconv from 'iconv-lite';
import { decodeText } from '../../../electron/documents/decode-text.ts';
import { type Delimiter, rowsFromDelimited } from '../../../electron/documents/rows-from-delimited.ts';
import { type Case, type Check, checkReference, fieldsOf, word } from '../../helpers/reference.ts';

const bytesOf = (hex: string): Uint8Array => Buffer.from(hex.replaceAll(' ', ''), 'hex');
const textOf = (bytes: Uint8Array): string => decodeText(bytes)?.text ?? 'noise';
const codePoints = (text: string): string =>
  [...text]
    .map((character) => (character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0'))
    .join(' ');
const fromCodePoints = (list: string): string =>
  String.fromCodePoint(...list.split(' ').map((hex) => Number.parseInt(hex, 16)));

const rowsOf = (row: Case): string[][] => {
  const delimiter = 'delimiter' in row.in ? (word(row.in, 'delimiter') as Delimiter) : ',';
  // A file's text reaches the rows only decoded, which takes its byte order mark away.
  return rowsFromDelimited(textOf(Buffer.from(word(row.in, 'text'))), delimiter);
};

const encodings: Record<string, string> = {
  utf8: 'utf-8',
  utf8_with_bom: 'utf-8',
  utf16le_with_bom: 'utf-16le',
  utf16be_with_bom: 'utf-16be',
  windows_1252: 'windows-1252',
};

function withoutMark(name: string, hex: string): Check[] {
  if (!name.startsWith('utf16')) return [];
  const unmarked = decodeText(bytesOf(hex.slice(4)));
  return [{ what: `${name} without its mark`, got: unmarked?.encoding, want: encodings[name] }];
}

checkReference('csv-and-text', {
  csv: (row) => [{ what: 'rows', got: rowsOf(row), want: row.out.rows }],
  'csv-error': (row) => {
    const lines = word(row.in, 'text').trim().split('\r\n');
    return [
      { what: 'the lines as they stand', got: rowsOf(row), want: lines.map((line) => line.split(',')) },
    ];
  },
  'csv-with-header': (row) => {
    const [header = [], ...rows] = rowsOf(row);
    const got = rows.map((cells) => Object.fromEntries(cells.map((cell, place) => [header[place], cell])));
    return [{ what: 'records', got, want: row.out.records }];
  },
  encoding: (row) => {
    const ascii = row.windows_1252_bytes_are_valid_utf8 === true;
    return Object.entries(row.out).flatMap(([name, hex]) => {
      const decoded = decodeText(bytesOf(String(hex)));
      const encoding = ascii && name === 'windows_1252' ? 'utf-8' : encodings[name];
      return [
        { what: `text from ${name}`, got: decoded?.text, want: row.in.text },
        { what: `encoding of ${name}`, got: decoded?.encoding, want: encoding },
        ...withoutMark(name, String(hex)),
      ];
    });
  },
  'byte-order-mark': (row) => {
    const encoding = word(row.out, 'encoding').split(' ')[0] ?? '';
    const letter = iconv.encode('Kick', encoding, { addBOM: false });
    const decoded = decodeText(Buffer.concat([bytesOf(word(row.in, 'first_bytes')), letter]));
    return [
      { what: 'encoding', got: decoded?.encoding, want: encoding },
      { what: 'the text after the mark', got: decoded?.text, want: 'Kick' },
    ];
  },
  'windows-1252-table-80-9F': (row) =>
    Object.entries(row.out).map(([byte, codePoint]) => ({
      what: `byte ${byte}`,
      got: codePoints(textOf(bytesOf(`41${byte}`)).slice(1)),
      want: codePoint,
    })),
  mojibake: (row) => {
    const text = word(row.in, 'utf8_bytes_read_as_windows_1252');
    const bytes = Buffer.from(text);
    return [
      {
        what: 'the wrong reading, for comparison',
        got: iconv.decode(bytes, 'windows-1252'),
        want: row.out.text,
      },
      { what: 'our reading', got: textOf(bytes), want: text },
    ];
  },
  'invalid-utf8': (row) => [
    // Marked as UTF-8, it is read as such; without the mark the bytes are those of a single-byte encoding.
    {
      what: 'code points',
      got: codePoints(textOf(bytesOf(`efbbbf${word(row.in, 'hex')}`))),
      want: row.out.text_code_points,
    },
    {
      what: 'encoding without a mark',
      got: decodeText(bytesOf(word(row.in, 'hex')))?.encoding,
      want: 'windows-1252',
    },
  ],
  normalisation: (row) => [
    {
      what: 'composed letters',
      got: textOf(Buffer.from(fromCodePoints(word(row.in, 'nfd_code_points')))),
      want: fieldsOf(row, 'out').nfc,
    },
  ],
  'known-fault-of-a-runtime': (row) => [
    { what: 'our reading', got: codePoints(textOf(bytesOf('809296'))), want: row.out.right },
  ],
});
