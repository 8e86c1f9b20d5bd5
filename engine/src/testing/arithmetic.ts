/**
 * Reads a working, such as `36 × 1.5 ÷ 4 layers`, as arithmetic: every word is dropped, × ÷ − √ are the usual
 * signs. `numbers` gives the value of each placeholder.
 */
export function workOut(template: string, numbers: Readonly<Record<string, number>>): number {
  const filled = template.replace(/\{\w+_name\}/g, '').replace(/\{(\w+)\}/g, (_, name: string) => {
    const value = numbers[name];
    if (value === undefined) throw new Error(`no value for ${name}`);
    return `(${value.toFixed(12)})`;
  });
  if (/^(largest|larger|la plus grande)\b/.test(template))
    return Math.max(...Array.from(filled.matchAll(/\((-?[\d.]+)\)/g), ([, number]) => Number(number)));
  // Words in brackets tell what the number before them is.
  const signs = filled
    .replace(/\s\([^\d()]*\)/gu, ' ')
    .replace(/,.*$/u, '')
    .replace(/\p{L}[\p{L}’'-]*/gu, ' ')
    .replace(/\s+/g, ' ');
  return expression(signs.replace(/[^\d.()+−\-×÷√ ]/gu, ''));
}

/** A small reader of sums: + −, then × ÷, then √, brackets and numbers. */
function expression(text: string): number {
  let at = 0;
  const peek = (): string => {
    while (text[at] === ' ') at++;
    return text[at] ?? '';
  };
  const sum = (): number => {
    let value = product();
    for (let sign = peek(); sign === '+' || sign === '−'; sign = peek()) {
      at++;
      value = sign === '+' ? value + product() : value - product();
    }
    return value;
  };
  const product = (): number => {
    let value = factor();
    for (let sign = peek(); sign === '×' || sign === '÷'; sign = peek()) {
      at++;
      value = sign === '×' ? value * factor() : value / factor();
    }
    return value;
  };
  const factor = (): number => {
    const first = peek();
    if (first === '√') {
      at++;
      return Math.sqrt(factor());
    }
    if (first === '(') {
      at++;
      const value = sum();
      if (peek() !== ')') throw new Error(`no closing bracket in ${text}`);
      at++;
      return value;
    }
    const number = /^-?[\d.]+/.exec(text.slice(at))?.[0];
    if (number === undefined) throw new Error(`no number at ${text.slice(at)} in ${text}`);
    at += number.length;
    return Number(number);
  };
  const value = sum();
  if (peek() !== '') throw new Error(`${text.slice(at)} is left over in ${text}`);
  return value;
}
