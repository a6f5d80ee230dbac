import { useEffect } from 'react';
import type { DesktopBridge, MenuCommand } from '../../shared/host/methods';
import { runCommand, typing } from './commands';

/** Hears the native menu where there is one. Undo and redo belong to a text while it is being typed. @returns how to stop hearing it. */
export function hearMenu(bridge: Pick<DesktopBridge, 'onMenu'> | undefined, run: (command: MenuCommand, path: string | null) => void = runCommand): () => void {
  if (bridge === undefined) return () => {};
  return bridge.onMenu((command, path) => {
    if ((command === 'undo' || command === 'redo') && typing(document.activeElement)) document.execCommand(command);
    else run(command, path);
  });
}

/** The native menu does what the keys do. */
export function useNativeMenu(): void {
  useEffect(() => hearMenu(window.brimful), []);
}
