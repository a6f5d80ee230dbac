/** The page's content policy takes the address of a script only from this policy; it lets the page's own files through and nothing else. */
const policy = window.trustedTypes === undefined ? null : window.trustedTypes.createPolicy('app', {
  createScriptURL(url) {
    const address = new URL(url, location.href);
    if (address.origin !== location.origin || address.protocol !== location.protocol) throw new TypeError(`not a script of this page: ${url}`);
    return address.href;
  },
});

/** A worker of the page's own, from the address that the build gives it; null where there are no workers. */
export function ownWorker(url: string): Worker | null {
  if (typeof Worker === 'undefined') return null;
  // The DOM types know no trusted addresses yet; a text is what they are to a worker.
  return new Worker((policy?.createScriptURL(url) ?? url) as string);
}
