/** Starts a thread of the page's own from the address of a file of the page. */
export const startThread = (address: string): Worker => new Worker(trusted(address), { type: 'module' });

/** The page's policy lets a thread start only from an address that was vouched for: this one is the page's own. */
function trusted(address: string): string | URL {
  const types = (window as Window & { trustedTypes?: TrustedTypes }).trustedTypes;
  if (!types) return address;
  const policy = types.createPolicy('own-thread', { createScriptURL: () => address });
  // The names of types are older than this kind of address; a worker takes it.
  return policy.createScriptURL(address) as string;
}

type TrustedTypes = {
  createPolicy(
    name: string,
    rules: { createScriptURL(address: string): string },
  ): { createScriptURL(address: string): unknown };
};
