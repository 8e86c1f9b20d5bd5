type Values = Readonly<Record<string, string | number>>;
type Say = (values: Values) => string;

const made = new Map<string, Say>();

/**
 * Fills a message: the part of ICU's form that the catalogues use (`{name}`, plural with `#` and `=2`, select).
 * Messages are read once for each language.
 */
export function fill(message: string, locale: string, values: Values): string {
  const key = `${locale} ${message}`;
  const say = made.get(key) ?? read(message, locale);
  made.set(key, say);
  return say(values);
}

const TEXT = /[^{}]+/y;
const TEXT_OR_COUNT = /#|[^{}#]+/y;
const ARGUMENT = /\{\s*(\w+)\s*(?:\}|,\s*(plural|select)\s*,)/y;
const BRANCH = /\s*(=\d+|\w+)\s*\{/y;
const CLOSED = /\s*\}/y;

interface Counting {
  readonly rules: Intl.PluralRules;
  readonly numbers: Intl.NumberFormat;
}
const countings = new Map<string, Counting>();
/** How a language counts. Made once for all its messages: making it takes longer than filling hundreds of them. */
function countingIn(locale: string): Counting {
  const counting = countings.get(locale) ?? {
    rules: new Intl.PluralRules(locale),
    numbers: new Intl.NumberFormat(locale),
  };
  countings.set(locale, counting);
  return counting;
}

function read(message: string, locale: string): Say {
  const { rules, numbers } = countingIn(locale);
  let at = 0;

  const take = (pattern: RegExp): RegExpExecArray | null => {
    pattern.lastIndex = at;
    const found = pattern.exec(message);
    if (found) at = pattern.lastIndex;
    return found;
  };
  const close = (): void => {
    if (!take(CLOSED)) throw new Error(`not closed at ${String(at)}: ${message}`);
  };
  const valueIn = (values: Values, name: string): string | number => {
    const value = values[name];
    if (value === undefined) throw new Error(`no ${name} for: ${message}`);
    return value;
  };

  /** Up to the brace that closes it; `counted` is the plural that it is a branch of. */
  function parts(counted: string | null): Say {
    const says: Say[] = [];
    for (;;) {
      const [text] = take(counted === null ? TEXT : TEXT_OR_COUNT) ?? [];
      const [, name, kind] = text === undefined ? (take(ARGUMENT) ?? []) : [];
      if (text === '#' && counted !== null)
        says.push((values) => numbers.format(Number(valueIn(values, counted))));
      else if (text !== undefined) says.push(() => text);
      else if (name === undefined) break;
      else if (kind === undefined) says.push((values) => String(valueIn(values, name)));
      else says.push(choice(name, kind === 'plural', counted));
    }
    return (values) => says.map((say) => say(values)).join('');
  }

  function choice(name: string, isPlural: boolean, counted: string | null): Say {
    const branches = new Map<string, Say>();
    for (let branch = take(BRANCH); branch; branch = take(BRANCH)) {
      branches.set(branch[1] ?? '', parts(isPlural ? name : counted));
      close();
    }
    close();
    const other = branches.get('other');
    if (!other) throw new Error(`no other for ${name}: ${message}`);
    return (values) => {
      const value = valueIn(values, name);
      const exact = isPlural ? branches.get(`=${String(value)}`) : undefined;
      const found = isPlural ? rules.select(Number(value)) : String(value);
      return (exact ?? branches.get(found) ?? other)(values);
    };
  }

  const whole = parts(null);
  if (at < message.length) throw new Error(`not understood at ${String(at)}: ${message}`);
  return whole;
}
