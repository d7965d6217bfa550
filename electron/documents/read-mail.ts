import PostalMime from 'postal-mime';
import { cleanText } from './decode-text.ts';
import { rowsFromText } from './rows-from-text.ts';
import { textOfHtml } from './text-of-html.ts';

/** The rows of a mail: its subject, its text, and a line for each attachment, which is brought in on its own. */
export async function rowsFromMail(bytes: Uint8Array): Promise<string[][]> {
  const mail = await PostalMime.parse(bytes, { maxNestingDepth: 20, maxHeadersSize: 1024 * 1024 });
  const text = mail.text || textOfHtml(mail.html ?? '');
  const attached = mail.attachments
    .map((attachment) => attachment.filename?.trim())
    .filter((name) => name !== undefined && name !== '')
    .map((name) => [`Attached to the mail, not read: ${name}. Bring it in on its own.`]);
  return [
    ...(mail.subject ? [[cleanText(mail.subject)]] : []),
    ...rowsFromText(cleanText(text)),
    ...attached,
  ];
}
