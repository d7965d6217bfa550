/** The value of a JSON text; some programs write a byte order mark before it. Throws a SyntaxError that says where. */
export const parseJson = (text: string): unknown => JSON.parse(text.replace(/^\ufeff/, ''));
