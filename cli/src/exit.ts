/** Exit codes: all well; problems found; could not run. */
export const FINE = 0;
export const PROBLEMS = 1;
export const COULD_NOT_RUN = 2;

/** What ends the command with a message for the person and exit code 2. */
export class CannotRun extends Error {
  override readonly name = 'CannotRun';
}
