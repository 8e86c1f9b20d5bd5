/**
 * Grammar of RFC 8259 without its nesting: what may come next. Runtimes word their messages each in their own way and
 * often leave the position out, so it is found here.
 */
type Expected = 'value' | 'value or ]' | 'key or }' | 'key' | ':' | ', or end' | 'nothing';

const token =
  /[ \t\n\r]*(?:([{}[\],:])|("(?:[ !#-[\]-\uffff]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*")|(-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null))/y;
const space = /[ \t\n\r]*/y;

/** Where the first token stands that can't stand there, or the text's length where it ends too soon; null for good JSON. */
export function jsonFaultAt(text: string): number | null {
  const open: ('{' | '[')[] = [];
  let expected: Expected = 'value';
  let at = 0;
  for (;;) {
    space.lastIndex = at;
    at += space.exec(text)?.[0].length ?? 0;
    if (at === text.length) return expected === 'nothing' ? null : at;
    token.lastIndex = at;
    const [found, mark, string] = token.exec(text) ?? [];
    const next: Expected | null =
      found === undefined ? null : after(expected, mark, string !== undefined, open);
    if (found === undefined || next === null) return at;
    expected = next;
    at += found.length;
  }
}

/** What may come after a token, null where the token itself may not come; keeps count of what is open. */
function after(
  expected: Expected,
  mark: string | undefined,
  isString: boolean,
  open: ('{' | '[')[],
): Expected | null {
  const closed = (): Expected => (open.length === 0 ? 'nothing' : ', or end');
  const isKey = expected === 'key' || expected === 'key or }';
  if (isKey && isString) return ':';
  if (expected === ':') return mark === ':' ? 'value' : null;
  if (expected === 'value' || expected === 'value or ]') {
    if (mark === undefined) return closed();
    if (mark === '{' || mark === '[') {
      open.push(mark);
      return mark === '{' ? 'key or }' : 'value or ]';
    }
  }
  if (expected === ', or end' && mark === ',') return open.at(-1) === '{' ? 'key' : 'value';
  const isEnd =
    (mark === '}' && open.at(-1) === '{' && (expected === 'key or }' || expected === ', or end')) ||
    (mark === ']' && open.at(-1) === '[' && (expected === 'value or ]' || expected === ', or end'));
  if (!isEnd) return null;
  open.pop();
  return closed();
}
