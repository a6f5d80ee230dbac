import { call } from '../bridge';
import { runCommand } from './commands';

const pauseMs = 30_000;

/** Opens the files that later starts hand over to the local host, one after the other. Asks again when a while went by without one. */
export async function hearHanded(): Promise<never> {
  for (;;) {
    const answer = await call('app.handed', {});
    if (!answer.ok) await new Promise((resolve) => { window.setTimeout(resolve, pauseMs); });
    else if (answer.value.path !== null) runCommand('openPath', answer.value.path);
  }
}
