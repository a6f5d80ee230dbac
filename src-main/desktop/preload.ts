import { contextBridge, ipcRenderer } from 'electron';
import { desktopChannels, hostMethods, menuCommands } from '../../shared/host/methods';
import type { DesktopBridge } from '../../shared/host/methods';

const methods: readonly string[] = hostMethods;

// All that the page gets: two functions on a frozen object. No event objects, no channel names of its choosing.
const bridge: DesktopBridge = Object.freeze({
  call: (method: string, input: unknown): Promise<unknown> =>
    methods.includes(method) ? ipcRenderer.invoke(desktopChannels.call, method, input) : Promise.reject(new Error('unknown call')),
  onMenu: (listener: Parameters<DesktopBridge['onMenu']>[0]) => {
    const hear = (_event: unknown, given: unknown, path: unknown): void => {
      const command = menuCommands.find((known) => known === given);
      if (command !== undefined) listener(command, typeof path === 'string' ? path : null);
    };
    ipcRenderer.on(desktopChannels.menu, hear);
    return () => void ipcRenderer.removeListener(desktopChannels.menu, hear);
  },
});

contextBridge.exposeInMainWorld('brimful', bridge);
