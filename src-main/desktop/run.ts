import { join } from 'node:path';
import { app, session } from 'electron';
import { desktopChannels } from '../../shared/host';
import type { MenuCommand } from '../../shared/host';
import { allCalls, makeHandle } from '../answer';
import { dataFolder, demoFolder, eventsFolder, projectFolder, rendererFolder } from '../place';
import { openStore } from '../store';
import { askedFile } from './asked-file';
import { answerCalls } from './calls';
import { guardContents, guardSession } from './guarded';
import { MainWindow, preloadPath } from './main-window';
import { nativeDialogs } from './native-dialogs';
import { setNativeMenu } from './native-menu';
import { PrintShelf } from './print-shelf';
import { sheetToPaper, sheetToPdf } from './print-window';
import { registerScheme, serveScheme } from './scheme';

/** Runs the desktop program. Everything before `whenReady` must happen before the program is ready. */
export async function runDesktop(): Promise<void> {
  registerScheme();
  app.enableSandbox();
  if (process.env['BRIMFUL_DATA_DIR']) app.setPath('userData', join(dataFolder(), 'desktop'));
  if (!app.requestSingleInstanceLock()) {
    app.quit();
    return;
  }
  let main: MainWindow | undefined;
  let openPath = askedFile(process.argv.slice(1), process.cwd());
  const send = (command: MenuCommand): void => main?.window.webContents.send(desktopChannels.menu, command, null);
  const openLater = (path: string | null): void => {
    if (main === undefined) {
      openPath = path ?? openPath;
      return;
    }
    main.raise();
    if (path !== null) main.openFile(path);
  };
  app.on('second-instance', (_event, args, folder) => openLater(askedFile(args.slice(1), folder)));
  app.on('open-file', (event, path) => {
    event.preventDefault();
    openLater(path);
  });
  app.on('window-all-closed', () => app.quit());
  app.on('web-contents-created', (_event, contents) => guardContents(contents));
  await app.whenReady();

  const project = projectFolder();
  const shelf = new PrintShelf();
  const store = await openStore({ data: dataFolder(), events: eventsFolder(), demos: demoFolder(project) });
  guardSession(session.defaultSession);
  serveScheme(rendererFolder(project), shelf);
  const own = new MainWindow(preloadPath(project), (contents, path) => contents.send(desktopChannels.menu, 'openPath' satisfies MenuCommand, path));
  main = own;
  const shell = {
    kind: 'desktop',
    version: app.getVersion(),
    openPath,
    dialogs: nativeDialogs(own.window),
    ready: () => own.ready(),
    setUnsaved: (unsaved: boolean) => own.setUnsaved(unsaved),
    close: () => own.window.close(),
    pdf: (html: string) => sheetToPdf(shelf, html),
    paper: (html: string) => sheetToPaper(shelf, html),
  } as const;
  answerCalls(makeHandle(allCalls(store, shell)), () => main?.window.webContents);
  setNativeMenu(send);
  await own.load();
}
