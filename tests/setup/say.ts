// A figure that a test run shall show, past the muffled console: one line, whether it passes or not.

export function say(line: string): void {
  process.stdout.write(`${line}\n`);
}
