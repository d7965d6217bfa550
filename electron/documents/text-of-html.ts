const entities: Record<string, string> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'", nbsp: ' ' };

/** What stands inside these is not text of the page. */
const unseen = new Set(['style', 'script', 'head', 'title']);
/** What a line of text ends with. */
const lineEnds = new Set([
  'br',
  '/p',
  '/div',
  '/tr',
  '/li',
  '/table',
  '/h1',
  '/h2',
  '/h3',
  '/h4',
  '/h5',
  '/h6',
]);

/** The words of a formatted text, as of a mail or a saved page; cells of its tables are parted by tabs. */
export function textOfHtml(html: string): string {
  const parts: string[] = [];
  let hidden: string | null = null;
  let last = 0;
  // Each tag is met once, so that no text, however broken, takes longer than its length.
  for (const match of html.matchAll(/<(!--[^>]*--|[^<>]*)>/g)) {
    const name = /^\/?[a-z][a-z0-9]*/i.exec(match[1] ?? '')?.[0].toLowerCase() ?? '';
    if (hidden === null) {
      addWords(parts, html.slice(last, match.index));
      addTag(parts, name);
      if (unseen.has(name)) hidden = name;
    } else if (name === `/${hidden}`) hidden = null;
    last = match.index + match[0].length;
  }
  if (hidden === null) addWords(parts, html.slice(last));
  return withCharacters(parts.join(''));
}

/** White space is one space, and none where a cell or a line begins. */
function addWords(parts: string[], words: string): void {
  const before = parts.at(-1) ?? '\n';
  const spaced = words.replace(/\s+/g, ' ');
  const added = before === '\t' || before === '\n' ? spaced.trimStart() : spaced;
  if (added !== '') parts.push(added);
}

function addTag(parts: string[], name: string): void {
  if (name === '/td' || name === '/th') parts.push('\t');
  if (!lineEnds.has(name)) return;
  // The last cell of a row is not followed by another one.
  if (parts.at(-1) === '\t') parts.pop();
  parts.push('\n');
}

/** Characters that are written by number or by name. */
function withCharacters(text: string): string {
  return text
    .replace(/&#(x?)([0-9a-f]{1,7});/gi, (whole, hex: string, digits: string) => {
      const code = Number.parseInt(digits, hex ? 16 : 10);
      return code > 0 && code <= 0x10ffff ? String.fromCodePoint(code) : whole;
    })
    .replace(/&([a-z]{2,6});/gi, (whole, name: string) => entities[name.toLowerCase()] ?? whole);
}
