/** Flags for every start: nothing is fetched, nothing is asked, nothing is shared with the everyday profile. */
export const quietFlags: readonly string[] = [
  '--no-first-run', '--no-default-browser-check', '--disable-background-networking', '--disable-component-update',
  '--disable-sync', '--disable-extensions', '--disable-quic', '--disable-default-apps', '--disable-domain-reliability',
  '--disable-features=Translate,MediaRouter,OptimizationHints',
];

/** Chromium refuses to start sandboxed as root; only then the sandbox is off, and the warning bar that follows from it is hidden. */
export const rootFlags = (uid: number | undefined): readonly string[] => (uid === 0 ? ['--no-sandbox', '--test-type'] : []);

/** The user id of this process; undefined where there are none. */
export const userId = (): number | undefined => process.getuid?.();
