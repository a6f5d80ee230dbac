import { dialog } from 'electron';
import type { BrowserWindow } from 'electron';
import type { Dialogs, Ending } from '../answer';
import { tell } from '../problem';

/** Names of the kinds of file in the native windows. */
const kindNames: Readonly<Record<Ending, string>> = {
  brimful: tell('host.dialog.event-files'),
  pdf: tell('host.dialog.pdf'),
  html: tell('host.dialog.html'),
  csv: tell('host.dialog.csv'),
  txt: tell('host.dialog.txt'),
  ics: tell('host.dialog.ics'),
};

/** The native windows that ask for a file. */
export function nativeDialogs(window: BrowserWindow): Dialogs {
  return {
    open: async (folder) => {
      const { canceled, filePaths } = await dialog.showOpenDialog(window, {
        title: tell('host.dialog.open'),
        defaultPath: folder,
        properties: ['openFile'],
        filters: [{ name: tell('host.dialog.event-files'), extensions: ['brimful'] }],
      });
      return canceled ? null : (filePaths[0] ?? null);
    },
    save: async (suggested, ending) => {
      const { canceled, filePath } = await dialog.showSaveDialog(window, {
        title: tell(ending === 'brimful' ? 'host.dialog.save' : 'host.dialog.export'),
        defaultPath: suggested,
        properties: ['createDirectory', 'showOverwriteConfirmation'],
        filters: [{ name: kindNames[ending], extensions: [ending] }],
      });
      if (canceled || filePath === '') return null;
      return filePath.toLowerCase().endsWith(`.${ending}`) ? filePath : `${filePath}.${ending}`;
    },
  };
}
