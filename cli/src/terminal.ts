/** Where the command reads and writes; a test gives its own. */
export interface Terminal {
  /** Standard output: the result and nothing else. */
  readonly out: (text: string) => void;
  /** Standard error: progress and what went wrong. */
  readonly note: (text: string) => void;
  readonly input: AsyncIterable<Uint8Array>;
  readonly environment: Readonly<Record<string, string | undefined>>;
  /** Whether somebody looks at the output as it comes. */
  readonly isScreen: boolean;
  readonly width: number;
  /** Whether somebody looks at standard error as it comes. */
  readonly showsProgress: boolean;
  /** Calls when somebody interrupts (Ctrl-C), until it is taken off again by what is handed back. */
  readonly onInterrupt: (stop: () => void) => () => void;
}

const NARROWEST = 60;
/** Into a file or a pipe, lines are as long as a page is wide. */
const PAGE_WIDTH = 100;

export const realTerminal = (): Terminal => ({
  out: (text) => process.stdout.write(text),
  note: (text) => process.stderr.write(text),
  input: process.stdin,
  environment: process.env,
  isScreen: process.stdout.isTTY,
  width: Math.max(NARROWEST, process.stdout.isTTY ? process.stdout.columns : PAGE_WIDTH),
  showsProgress: process.stderr.isTTY,
  onInterrupt(stop) {
    process.once('SIGINT', stop);
    return () => process.off('SIGINT', stop);
  },
});
