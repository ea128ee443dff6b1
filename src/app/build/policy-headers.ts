// The headers of src/public/_headers, for servers that don't read that file: the preview, and the
// tests, so that the policy is enforced there as it is on a host.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';

const file = join(import.meta.dirname, '..', '..', 'public', '_headers');

/** Header by header, those that go with every file. */
export function policyHeaders(): Record<string, string> {
  const lines = readFileSync(file, 'utf8').split('\n').slice(1);
  const pairs = lines.flatMap((line) => /^\s+([\w-]+):\s*(.+)$/.exec(line)?.slice(1, 3) ?? []);
  const headers: Record<string, string> = {};
  for (let at = 0; at + 1 < pairs.length; at += 2) headers[pairs[at]!] = pairs[at + 1]!;
  return headers;
}
