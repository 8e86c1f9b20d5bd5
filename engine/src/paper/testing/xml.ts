/**
 * Names of the elements of an XML document, in order. Throws where it isn't well formed (XML 1.0: tags
 * nested, attributes quoted and told once, no bare `<` or `&`).
 */
export function readXml(text: string): readonly string[] {
  const names: string[] = [];
  const open: string[] = [];
  const token = /<(\/?)([A-Za-z][\w-]*)((?:\s+[\w:-]+="[^"<]*")*)\s*(\/?)>|([^<]+)/gy;
  let end = 0;
  for (let match = token.exec(text); match; match = token.exec(text)) {
    end = token.lastIndex;
    const [, closing, name = '', attributes = '', single, content = ''] = match;
    if (/&(?!(?:amp|lt|gt|quot|#\d+);)/.test(attributes + content)) throw new Error(`Bare &: ${match[0]}`);
    const told = [...attributes.matchAll(/([\w:-]+)="/g)].map((each) => each[1]);
    if (new Set(told).size !== told.length) throw new Error(`An attribute told twice: ${match[0]}`);
    if (closing) {
      if (open.pop() !== name) throw new Error(`</${name}> closes another`);
    } else if (name) {
      names.push(name);
      if (!single) open.push(name);
    }
  }
  if (end !== text.length || open.length > 0) throw new Error(`Not well formed at ${String(end)}`);
  return names;
}
