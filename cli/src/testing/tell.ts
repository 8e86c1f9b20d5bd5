import { run } from '../run.ts';

export interface Told {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

interface Around {
  readonly input?: string | readonly string[];
  readonly environment?: Readonly<Record<string, string>>;
  readonly isScreen?: boolean;
  /** Interrupts as soon as anything can be. */
  readonly interrupts?: boolean;
}

/** Runs a command line in this process and gathers what it said. */
export async function tell(argv: readonly string[], around: Around = {}): Promise<Told> {
  let out = '';
  let err = '';
  const chunks = typeof around.input === 'string' ? [around.input] : (around.input ?? []);
  const code = await run(argv, {
    out: (text) => {
      out += text;
    },
    note: (text) => {
      err += text;
    },
    input: (async function* () {
      for (const chunk of chunks) yield await Promise.resolve(Buffer.from(chunk));
    })(),
    environment: around.environment ?? {},
    isScreen: around.isScreen ?? false,
    width: 100,
    showsProgress: around.isScreen ?? false,
    onInterrupt: (stop) => {
      const timer = around.interrupts === true ? setTimeout(stop, 300) : undefined;
      return () => {
        clearTimeout(timer);
      };
    },
  });
  return { code, out, err };
}

/** Words as they are read: line ends and no-break spaces are spaces. */
export const plain = (text: string): string => text.replace(/\s+/g, ' ');

/** A likely body, and the smallest request there is. */
export const smallest = JSON.stringify({ body: { waist: '30 in', hip: '28 in', waistToHem: '32 in' } });
export const likely = JSON.stringify({
  body: { waist: '28 in', hip: '36 in', waistToHem: '33 in', waistToFloor: '40 in', height: '5 ft 5 in' },
});
