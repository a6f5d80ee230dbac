import { Menu } from 'electron';
import type { MenuItemConstructorOptions } from 'electron';
import type { MenuCommand } from '../../shared/host';
import { tell } from '../problem';

type Send = (command: MenuCommand) => void;

/** The menu as data, so that a test can read it. The face hears the same keys itself; where the system allows, the menu only shows them. */
export function menuTemplate(send: Send, platform: string): MenuItemConstructorOptions[] {
  const item = (label: string, command: MenuCommand, accelerator: string): MenuItemConstructorOptions =>
    ({ label, accelerator, registerAccelerator: false, click: () => send(command) });
  const line: MenuItemConstructorOptions = { type: 'separator' };
  return [
    ...(platform === 'darwin' ? [{ role: 'appMenu' } as const] : []),
    {
      label: tell('host.menu.file'),
      submenu: [
        item(tell('host.menu.new'), 'new', 'CmdOrCtrl+N'),
        item(tell('host.menu.open'), 'open', 'CmdOrCtrl+O'),
        line,
        item(tell('host.menu.save'), 'save', 'CmdOrCtrl+S'),
        item(tell('host.menu.save-as'), 'saveAs', 'CmdOrCtrl+Shift+S'),
        line,
        item(tell('host.menu.print'), 'print', 'CmdOrCtrl+P'),
        line,
        platform === 'darwin' ? { role: 'close' } : { role: 'quit' },
      ],
    },
    {
      label: tell('host.menu.edit'),
      submenu: [
        item(tell('host.menu.undo'), 'undo', 'CmdOrCtrl+Z'),
        item(tell('host.menu.redo'), 'redo', 'CmdOrCtrl+Shift+Z'),
        line,
        { role: 'cut' },
        { role: 'copy' },
        { role: 'paste' },
        { role: 'selectAll' },
      ],
    },
    { label: tell('host.menu.view'), submenu: [{ role: 'resetZoom' }, { role: 'zoomIn' }, { role: 'zoomOut' }, line, { role: 'togglefullscreen' }] },
    { label: tell('host.menu.window'), role: 'windowMenu' },
  ];
}

/** Puts the menu in place. */
export function setNativeMenu(send: Send): void {
  Menu.setApplicationMenu(Menu.buildFromTemplate(menuTemplate(send, process.platform)));
}
