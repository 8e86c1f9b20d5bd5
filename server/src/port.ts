const USUAL = 8080;

/** The port that `PORT` asks for; 0 lets the machine choose. Null where it is no port. */
export function portFrom(text: string | undefined): number | null {
  if (text === undefined || text === '') return USUAL;
  const port = Number(text);
  return /^\d+$/.test(text) && port <= 65_535 ? port : null;
}
