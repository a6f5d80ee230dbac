import { versionOf } from '../../shared/event';
import { HostProblem } from '../problem';
import { readText } from '../store';

/** An event file that a newer program wrote is never written over in an older form: what only the newer one knows would be lost. @throws HostProblem `newer-format` */
export async function refuseOlderForm(path: string, text: string): Promise<void> {
  const there = await readText(path).then((file) => formOf(file.text), () => null);
  const ours = formOf(text);
  if (there !== null && ours !== null && there > ours) throw HostProblem.of('host.newer-format', { path });
}

function formOf(text: string): number | null {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === 'object' && value !== null && 'format' in value ? versionOf(value.format) : null;
  } catch {
    return null;
  }
}
