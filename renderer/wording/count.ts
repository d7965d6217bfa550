/** "1 line", "3 lines"; an irregular plural is given. */
export const count = (n: number, one: string, many = `${one}s`) => `${n} ${n === 1 ? one : many}`;
