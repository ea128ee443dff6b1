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

function ownOrigin(address: string): string {
  const { origin, href } = new URL(address, location.href);
  if (origin !== location.origin) throw new RangeError(`a script of ${origin} is not run here`);
  return href;
}
