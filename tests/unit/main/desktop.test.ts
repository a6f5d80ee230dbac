import { mkdir, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';

type Listener = (...args: unknown[]) => unknown;
/** A stand-in that remembers what was set up on it. */
const fake = vi.hoisted(() => {
  class Emitter {
    readonly heard = new Map<string, Listener[]>();
    on(name: string, listener: Listener): this {
      this.heard.set(name, [...(this.heard.get(name) ?? []), listener]);
      return this;
    }
    once(name: string, listener: Listener): this {
      return this.on(name, listener);
    }
    emit(name: string, ...args: unknown[]): void {
      for (const listener of this.heard.get(name) ?? []) listener(...args);
    }
  }
  class Contents extends Emitter {
    readonly mainFrame = { url: 'app://main/index.html' };
    readonly sent: unknown[][] = [];
    openHandler: (() => unknown) | undefined;
    setWindowOpenHandler(handler: () => unknown): void {
      this.openHandler = handler;
    }
    send(...args: unknown[]): void {
      this.sent.push(args);
    }
    printed: unknown[] = [];
    printToPDF(options: unknown): Promise<Buffer> {
      this.printed.push(options);
      return Promise.resolve(Buffer.from('%PDF /Type /Page '));
    }
    print(options: unknown, done: (success: boolean, reason: string) => void): void {
      this.printed.push(options);
      done(...boxes.paper);
    }
  }
  class Window extends Emitter {
    static readonly all: Window[] = [];
    readonly webContents = new Contents();
    readonly options: { webPreferences: Record<string, unknown>; show?: boolean };
    readonly loaded: string[] = [];
    readonly calls: string[] = [];
    constructor(options: { webPreferences: Record<string, unknown> }) {
      super();
      this.options = options;
      Window.all.push(this);
      app.emit('web-contents-created', {}, this.webContents);
    }
    loadURL(url: string): Promise<void> {
      this.loaded.push(url);
      return Promise.resolve();
    }
    show(): void { this.calls.push('show'); }
    close(): void { this.calls.push('close'); }
    destroy(): void { this.calls.push('destroy'); }
    focus(): void { this.calls.push('focus'); }
    restore(): void { this.calls.push('restore'); }
    isDestroyed(): boolean { return this.calls.includes('destroy'); }
    isMinimized(): boolean { return true; }
    setDocumentEdited(edited: boolean): void { this.calls.push(`edited ${edited}`); }
  }
  const app = new (class extends Emitter {
    readonly calls: string[] = [];
    lock = true;
    enableSandbox(): void { this.calls.push('enableSandbox'); }
    setPath(): void { this.calls.push('setPath'); }
    requestSingleInstanceLock(): boolean { return this.lock; }
    quit(): void { this.calls.push('quit'); }
    whenReady(): Promise<void> { this.calls.push('whenReady'); return Promise.resolve(); }
    getVersion(): string { return '1.2.3'; }
  })();
  const session = {
    permission: undefined as Listener | undefined, check: undefined as Listener | undefined, device: undefined as Listener | undefined, before: undefined as Listener | undefined,
    setPermissionRequestHandler(handler: Listener): void { this.permission = handler; },
    setPermissionCheckHandler(handler: Listener): void { this.check = handler; },
    setDevicePermissionHandler(handler: Listener): void { this.device = handler; },
    webRequest: { onBeforeRequest: (handler: Listener): void => { session.before = handler; } },
  };
  const schemes: unknown[] = [];
  const answers = new Map<string, Listener>();
  const pages = new Map<string, (request: { url: string; method: string }) => Promise<Response>>();
  const boxes = { answer: 0, paper: [true, ''] as [boolean, string], said: [] as unknown[], open: { canceled: false, filePaths: ['/x/a.brimful'] }, save: { canceled: false, filePath: '/x/b' } };
  const menus: unknown[] = [];
  const exposed = new Map<string, unknown>();
  const renderer = Object.assign(new Emitter(), { invoked: [] as unknown[][], invoke(...args: unknown[]) { this.invoked.push(args); return Promise.resolve('ok'); }, removeListener: vi.fn<Listener>() });
  return { Window, Contents, app, session, schemes, answers, pages, boxes, menus, exposed, renderer };
});

// The factory is needed: the real package would try to fetch its runtime.
vi.mock('electron', () => ({
  app: fake.app,
  session: { defaultSession: fake.session },
  BrowserWindow: fake.Window,
  ipcMain: { handle: (channel: string, listener: Listener) => fake.answers.set(channel, listener) },
  protocol: {
    registerSchemesAsPrivileged: (schemes: unknown) => fake.schemes.push(...(schemes as unknown[])),
    handle: (scheme: string, handler: never) => fake.pages.set(scheme, handler),
  },
  dialog: {
    showMessageBoxSync: () => fake.boxes.answer,
    showMessageBox: (_window: unknown, options: unknown) => { fake.boxes.said.push(options); return Promise.resolve({ response: 0 }); },
    showOpenDialog: () => Promise.resolve(fake.boxes.open),
    showSaveDialog: () => Promise.resolve(fake.boxes.save),
  },
  Menu: { buildFromTemplate: (template: unknown) => template, setApplicationMenu: (menu: unknown) => fake.menus.push(menu) },
  contextBridge: { exposeInMainWorld: (name: string, value: unknown) => fake.exposed.set(name, value) },
  ipcRenderer: fake.renderer,
}));

const { runDesktop } = await import('../../../src-main/desktop/run');
const { isOwnSender } = await import('../../../src-main/desktop/sender');
const { menuTemplate } = await import('../../../src-main/desktop/native-menu');
const { askedFile } = await import('../../../src-main/desktop/asked-file');
const { isOwnAddress } = await import('../../../src-main/desktop/guarded');
const { desktopChannels, hostMethods } = await import('../../../shared/host');

let folder: string;
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'brimful-desktop-'));
  vi.stubEnv('BRIMFUL_DATA_DIR', folder);
  await runDesktop();
});
afterAll(async () => {
  vi.unstubAllEnvs();
  await rm(folder, { recursive: true, force: true });
});

const main = () => fake.Window.all[0]!;
const call = (event: unknown, ...args: unknown[]) => fake.answers.get(desktopChannels.call)!(event, ...args);
const ownEvent = () => ({ sender: main().webContents, senderFrame: main().webContents.mainFrame });

describe('the window', () => {
  it('is guarded on every side', () => {
    expect(main().options.webPreferences).toMatchObject({
      sandbox: true, contextIsolation: true, nodeIntegration: false, nodeIntegrationInWorker: false, nodeIntegrationInSubFrames: false,
      webSecurity: true, webviewTag: false, devTools: false, preload: expect.stringMatching(/out[\\/]preload[\\/]preload\.cjs$/) as string,
    });
    expect(main().loaded).toEqual(['app://main/index.html']);
  });

  it('enables the sandbox and the scheme before it is ready', () => {
    expect(fake.app.calls.indexOf('enableSandbox')).toBeLessThan(fake.app.calls.indexOf('whenReady'));
    expect(fake.schemes).toEqual([{ scheme: 'app', privileges: { standard: true, secure: true, supportFetchAPI: true, codeCache: true, bypassCSP: false } }]);
  });

  it.each(['will-navigate', 'will-redirect', 'will-attach-webview', 'will-prevent-unload'])('prevents %s', (name) => {
    const event = { preventDefault: vi.fn<() => void>() };
    main().webContents.emit(name, event);
    expect(event.preventDefault).toHaveBeenCalled();
  });

  it('opens no other window, and guards any that is made', () => {
    expect(main().webContents.openHandler?.()).toEqual({ action: 'deny' });
    const other = new fake.Contents();
    fake.app.emit('web-contents-created', {}, other);
    expect(other.openHandler?.()).toEqual({ action: 'deny' });
    expect([...other.heard.keys()]).toEqual(['will-navigate', 'will-redirect', 'will-attach-webview', 'will-prevent-unload']);
  });

  it('is guarded once, however often it is asked for', () => {
    fake.app.emit('web-contents-created', {}, main().webContents);
    for (const name of ['will-navigate', 'will-redirect', 'will-attach-webview', 'will-prevent-unload']) expect(main().webContents.heard.get(name), name).toHaveLength(1);
  });

  it('is drawn anew when its page ends by itself, and says so first', async () => {
    call(ownEvent(), 'app.setUnsaved', { unsaved: true });
    await vi.waitFor(() => expect(main().calls.at(-1)).toBe('edited true'));
    fake.boxes.said.length = 0;
    const loaded = main().loaded.length;
    main().webContents.emit('render-process-gone', {}, { reason: 'clean-exit', exitCode: 0 });
    main().webContents.emit('render-process-gone', {}, { reason: 'crashed', exitCode: 5 });
    await vi.waitFor(() => expect(main().loaded).toHaveLength(loaded + 1));
    expect(fake.boxes.said).toMatchObject([{ type: 'error', message: expect.stringContaining('drawn anew') as string, detail: expect.stringContaining('kept aside') as string }]);
    // What was not saved is in the kept copy: nothing stands in the way of closing.
    const event = { preventDefault: vi.fn<() => void>() };
    main().emit('close', event);
    expect(event.preventDefault).not.toHaveBeenCalled();
    await call(ownEvent(), 'app.ready', {});
  });

  it('gives no permission and lets nothing out of the computer', () => {
    const decided: unknown[] = [];
    fake.session.permission?.({}, 'media', (yes: unknown) => decided.push(yes));
    fake.session.before?.({ url: 'https://example.org/x' }, (answer: unknown) => decided.push(answer));
    fake.session.before?.({ url: 'app://main/x.js' }, (answer: unknown) => decided.push(answer));
    expect(decided).toEqual([false, { cancel: true }, { cancel: false }]);
    expect(fake.session.check?.()).toBe(false);
    expect(fake.session.device?.()).toBe(false);
    expect(['file:///etc/passwd', 'http://127.0.0.1', 'ws://x', 'appx://main/', 'devtools://devtools/bundled/x.html'].map((url) => isOwnAddress(url))).toEqual([false, false, false, false, false]);
    expect(isOwnAddress('devtools://devtools/bundled/x.html', true)).toBe(true);
  });

  it('asks before it closes with unsaved changes', () => {
    const event = { preventDefault: vi.fn<() => void>() };
    main().emit('close', event);
    expect(event.preventDefault).not.toHaveBeenCalled();
    call(ownEvent(), 'app.setUnsaved', { unsaved: true });
    return vi.waitFor(() => {
      expect(main().calls).toContain('edited true');
      fake.boxes.answer = 0;
      main().emit('close', event);
      expect(event.preventDefault).toHaveBeenCalledOnce();
      fake.boxes.answer = 1;
      main().emit('close', event);
      expect(event.preventDefault).toHaveBeenCalledOnce();
    });
  });
});

describe('calls', () => {
  it('answers its own page', async () => {
    expect(await call(ownEvent(), 'app.info', {})).toMatchObject({ ok: true, value: { host: 'desktop', dialogs: true, version: '1.2.3' } });
    expect(await call(ownEvent(), '__proto__', {})).toMatchObject({ ok: false, problem: { code: 'unknown-method' } });
  });

  it('refuses everybody else', () => {
    const stranger = new fake.Contents();
    const frame = { url: 'app://main/index.html' };
    for (const event of [
      { sender: stranger, senderFrame: stranger.mainFrame },
      { sender: main().webContents, senderFrame: frame },
      { sender: main().webContents, senderFrame: null },
    ]) expect(() => call(event, 'app.info', {})).toThrow('refused');
  });

  it.each(['https://main/', 'app://other/', 'app://main.evil/', 'app://print/x', 'file:///app://main/', 'null'])('refuses its own window at %s', (url) => {
    const contents = { mainFrame: { url } } as never as Parameters<typeof isOwnSender>[1] & { mainFrame: never };
    expect(isOwnSender({ sender: contents, senderFrame: contents.mainFrame }, contents)).toBe(false);
  });

  it('knows no sender before there is a window', () => {
    expect(isOwnSender(ownEvent() as never, undefined)).toBe(false);
  });
});

const get = (url: string, method = 'GET') => fake.pages.get('app')!({ url, method });
describe('the scheme', () => {
  it.each(['app://main/../package.json', 'app://main/%2e%2e/%2e%2e/package.json', 'app://other/index.html', 'app://main/gone.js', 'app://print/guess'])('does not give out %s', async (url) => {
    expect((await get(url)).status).toBe(404);
  });

  it('is read only, and under the policy', async () => {
    const response = await get('app://main/', 'POST');
    expect(response.status).toBe(405);
    expect(response.headers.get('content-security-policy')).toContain(`default-src 'none'`);
  });
});

describe('printing', () => {
  it('lets a sheet have style and fonts of its own in its print window only, and no script, frame or address', async () => {
    let policy = '';
    const load = vi.spyOn(fake.Window.prototype, 'loadURL').mockImplementation(async (url: string) => {
      policy = (await fake.pages.get('app')!({ url, method: 'GET' })).headers.get('content-security-policy') ?? '';
    });
    await call(ownEvent(), 'print.paper', { html: '<style>@page{size:a4}</style>', name: 'x' });
    load.mockRestore();
    const rules = Object.fromEntries(policy.split('; ').map((rule) => [rule.split(' ')[0], rule.split(' ').slice(1).join(' ')]));
    expect(rules).toEqual({ 'default-src': `'none'`, 'style-src': `'unsafe-inline'`, 'font-src': 'data:', 'img-src': 'data:', 'base-uri': `'none'`, 'form-action': `'none'` });
    for (const path of ['', 'index.html', 'gone.html']) {
      const own = (await get(`app://main/${path}`)).headers.get('content-security-policy') ?? '';
      expect(own).not.toContain('unsafe-inline');
      expect(/font-src ([^;]*)/.exec(own)?.[1]).toBe(`'self'`);
    }
  });

  it('prints a sheet in a window nobody sees, without scripts, and clears it away', async () => {
    const path = join(folder, 'events', 'sheet.pdf');
    await mkdir(join(folder, 'events'), { recursive: true });
    let seen: Response | undefined;
    const load = vi.spyOn(fake.Window.prototype, 'loadURL').mockImplementation(async (url: string) => {
      seen = await fake.pages.get('app')!({ url, method: 'GET' });
    });
    expect(await call(ownEvent(), 'print.pdf', { html: '<p>sheet</p>', name: 'sheet', path })).toEqual({ ok: true, value: { path, pages: 1 } });
    const url = load.mock.calls[0]?.[0] ?? '';
    load.mockRestore();
    expect(await seen?.text()).toBe('<p>sheet</p>');
    expect(seen?.headers.get('content-security-policy')).toMatch(/^default-src 'none'; style-src 'unsafe-inline'; font-src data:/);
    const sheet = fake.Window.all.at(-1)!;
    expect(sheet.options).toMatchObject({ show: false, webPreferences: { javascript: false, sandbox: true, contextIsolation: true } });
    expect(sheet.webContents.printed).toEqual([{ preferCSSPageSize: true, printBackground: true, generateTaggedPDF: true, generateDocumentOutline: true }]);
    expect(sheet.calls).toContain('destroy');
    expect((await fake.pages.get('app')!({ url, method: 'GET' })).status).toBe(404);
  });

  it.each([[true, ''], [false, 'Print job canceled'], [false, 'cancelled']] as const)('opens the native print window; to close it is no failure (%s %s)', async (success, reason) => {
    fake.boxes.paper = [success, reason];
    expect(await call(ownEvent(), 'print.paper', { html: '<p>x</p>', name: 'x' })).toEqual({ ok: true, value: { handled: true } });
  });

  it('tells that the printer did not take the sheet', async () => {
    fake.boxes.paper = [false, 'Print job failed'];
    expect(await call(ownEvent(), 'print.paper', { html: '<p>x</p>', name: 'x' })).toMatchObject({ ok: false, problem: { code: 'paper-failed', message: expect.stringContaining('Print job failed') as string, mend: expect.any(String) as string } });
    fake.boxes.paper = [true, ''];
    expect(fake.Window.all.at(-1)?.calls).toContain('destroy');
  });

  it.each(['print.pdf', 'print.paper'])('gives a sheet that is never drawn twenty seconds (%s)', async (method) => {
    vi.useFakeTimers();
    try {
      const load = vi.spyOn(fake.Window.prototype, 'loadURL').mockImplementation(() => new Promise(() => {}));
      const answer = call(ownEvent(), method, { html: '<p>x</p>', name: 'x', path: null });
      await vi.advanceTimersByTimeAsync(20_000);
      load.mockRestore();
      expect(await answer).toMatchObject({ ok: false, problem: { code: 'print-failed', message: expect.stringContaining('not drawn in 20 seconds') as string } });
      expect(fake.Window.all.at(-1)?.calls).toContain('destroy');
    } finally {
      vi.useRealTimers();
    }
  });
});

describe('dialogs', () => {
  beforeEach(() => {
    fake.boxes.open = { canceled: false, filePaths: ['/x/a.brimful'] };
    fake.boxes.save = { canceled: false, filePath: '/x/b' };
  });
  it('takes what was chosen and adds the ending', async () => {
    expect(await call(ownEvent(), 'events.chooseOpen', {})).toEqual({ ok: true, value: { path: '/x/a.brimful' } });
    expect(await call(ownEvent(), 'events.chooseSave', { name: 'x' })).toEqual({ ok: true, value: { path: '/x/b.brimful', taken: false } });
  });
  it('answers null when they were closed', async () => {
    fake.boxes.open = { canceled: true, filePaths: [] };
    fake.boxes.save = { canceled: true, filePath: '' };
    expect(await call(ownEvent(), 'events.chooseOpen', {})).toEqual({ ok: true, value: { path: null } });
    expect(await call(ownEvent(), 'events.chooseSave', { name: 'x', extension: 'csv' })).toEqual({ ok: true, value: { path: null, taken: false } });
  });
});

describe('a second start and files from outside', () => {
  it('keeps the file until the page listens, also while it is drawn anew', async () => {
    const { webContents } = main();
    webContents.emit('render-process-gone', {}, { reason: 'crashed', exitCode: 5 });
    const before = webContents.sent.length;
    fake.app.emit('second-instance', {}, ['brimful', '/x/one.brimful'], '/');
    fake.app.emit('open-file', { preventDefault: () => {} }, '/x/two.brimful');
    expect(webContents.sent).toHaveLength(before);
    await call(ownEvent(), 'app.ready', {});
    expect(webContents.sent.slice(before)).toEqual([[desktopChannels.menu, 'openPath', '/x/one.brimful'], [desktopChannels.menu, 'openPath', '/x/two.brimful']]);
    await call(ownEvent(), 'app.ready', {});
    expect(webContents.sent).toHaveLength(before + 2);
  });

  it('raises the window and opens the file', async () => {
    await call(ownEvent(), 'app.ready', {});
    fake.app.emit('second-instance', {}, ['brimful', '--flag', 'feast.brimful'], '/home/x');
    expect(main().calls).toEqual(expect.arrayContaining(['restore', 'focus']));
    expect(main().webContents.sent.at(-1)).toEqual([desktopChannels.menu, 'openPath', '/home/x/feast.brimful']);
    const event = { preventDefault: vi.fn<() => void>() };
    fake.app.emit('open-file', event, '/x/other.brimful');
    expect(event.preventDefault).toHaveBeenCalled();
    expect(main().webContents.sent.at(-1)).toEqual([desktopChannels.menu, 'openPath', '/x/other.brimful']);
  });
  it('takes only event files from a command line', () => {
    expect(askedFile(['.', '--x.brimful', '/a/B.BRIMFUL'], '/w')).toBe('/a/B.BRIMFUL');
    expect(askedFile(['.'], '/w')).toBeNull();
  });
  it('ends at once when another one runs', async () => {
    fake.app.lock = false;
    const windows = fake.Window.all.length;
    await runDesktop();
    expect(fake.app.calls.at(-1)).toBe('quit');
    expect(fake.Window.all).toHaveLength(windows);
    fake.app.lock = true;
  });
});

describe('the menu', () => {
  it('sends its commands to the face', () => {
    const sent: string[] = [];
    const items = menuTemplate((command) => sent.push(command), 'linux').flatMap((menu) => (Array.isArray(menu.submenu) ? menu.submenu : []));
    for (const item of items) if (item.click) (item.click as () => void)();
    expect(sent).toEqual(['new', 'open', 'save', 'saveAs', 'print', 'undo', 'redo']);
    expect(items.filter((item) => item.click).every((item) => item.registerAccelerator === false && item.label !== '')).toBe(true);
  });
  it('begins with the program menu on a Mac only', () => {
    expect(menuTemplate(() => {}, 'darwin')[0]).toEqual({ role: 'appMenu' });
    expect(menuTemplate(() => {}, 'win32')[0]?.label).toBe('File');
    expect(fake.menus).toHaveLength(1);
  });
});

describe('the preload', () => {
  it('shows the page one frozen object with the known calls', async () => {
    await import('../../../src-main/desktop/preload');
    const bridge = fake.exposed.get('brimful') as { call: (method: string, input: unknown) => Promise<unknown>; onMenu: (listener: (...args: unknown[]) => void) => () => void };
    expect([...fake.exposed.keys()]).toEqual(['brimful']);
    expect(Object.isFrozen(bridge)).toBe(true);
    expect(Object.keys(bridge)).toEqual(['call', 'onMenu']);
    for (const method of hostMethods) await bridge.call(method, { a: 1 });
    expect(fake.renderer.invoked.map(([channel, method]) => [channel, method])).toEqual(hostMethods.map((method) => [desktopChannels.call, method]));
    await expect(bridge.call('app.quit', {})).rejects.toThrow('unknown call');
    const heard: unknown[][] = [];
    const stop = bridge.onMenu((...args) => heard.push(args));
    fake.renderer.emit(desktopChannels.menu, { sender: 'secret' }, 'save');
    fake.renderer.emit(desktopChannels.menu, {}, 'openPath', '/x/a.brimful');
    fake.renderer.emit(desktopChannels.menu, {}, 'format-disk');
    expect(heard).toEqual([['save', null], ['openPath', '/x/a.brimful']]);
    stop();
    expect(fake.renderer.removeListener).toHaveBeenCalledOnce();
  });
});
