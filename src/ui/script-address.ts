// Lets the page run a script of its own origin under its content policy, and none from elsewhere.

/** As much of the browser's trusted types as is needed; not every browser has them. */
interface ScriptPolicies {
  createPolicy(
    name: string,
    rules: { readonly createScriptURL: (address: string) => string },
  ): { createScriptURL(address: string): unknown };
}

/** The name that the content policy allows, once. */
const NAME = 'app-script-url';

/** The policies made, by the window that they hold in. */
const made = new WeakMap<object, ReturnType<ScriptPolicies['createPolicy']>>();

/**
 * An address that a worker may be begun with.
 *
 * @param address - of a script of the page
 * @returns the same, trusted
 * @throws RangeError where it is of another origin
 */
export function scriptAddress(address: string): string {
  const { trustedTypes } = globalThis as { readonly trustedTypes?: ScriptPolicies };
  if (!trustedTypes) return ownOrigin(address);
  const policy =
    made.get(trustedTypes) ?? trustedTypes.createPolicy(NAME, { createScriptURL: ownOrigin });
  made.set(trustedTypes, policy);
  // What a policy trusts stands for its text wherever a script is begun.
  return policy.createScriptURL(address) as string;
}

/**
 * Begins a worker.
 *
 * @param address - of its script, as the page was built with it
 * @param name - to know it by
 * @returns the worker
 * @throws RangeError where the script is of another origin
 */
export function beginScript(address: string, name: string): Worker {
  // From the disk, browsers begin what stands in the page's own text as a plain script only.
  const type = import.meta.env.MODE === 'single' ? 'classic' : 'module';
  return new Worker(scriptAddress(address), { type, name });
}

/** A page from the disk is of no origin; what it made itself is, like that page, of none. */
function ownOrigin(address: string): string {
  const { origin, href, protocol } = new URL(address, location.href);
  const isOwn = globalThis.origin === 'null' ? protocol === 'blob:' : origin === location.origin;
  if (!isOwn) throw new RangeError(`a script of ${origin} is not run here`);
  return href;
}
